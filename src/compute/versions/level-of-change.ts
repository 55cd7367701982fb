import type { CellChange } from './changed-cells.ts';

/** Which of a version's three numbers a release raises. */
export type Level = 'major' | 'minor' | 'patch';

/** Keys of trial.yaml by which the weights are understood: units, variables, factors, design, columns. */
const meaning = ['variables', 'factors', 'design', 'harvest'];

/** Keys of trial.yaml from which published figures are reckoned. */
const figures = ['containers', 'dates', 'nutrients', 'status', 'crop'];

/**
 * The level that changes call for: major where they change what the numbers mean (a unit, a variable, a factor, the
 * design, the treatment of a position), minor where they correct numbers, patch where they touch only words about them.
 */
export function levelOfChange(changes: readonly CellChange[]): Level {
  const levels = changes.map(levelOf);
  return levels.includes('major') ? 'major' : levels.includes('minor') ? 'minor' : 'patch';
}

function levelOf({ file, row, column }: CellChange): Level {
  if (column === 'remark' || column.endsWith('name')) return 'patch';
  if (file === 'layout.csv') return column === 'plants' ? 'minor' : 'major';
  if (file !== 'trial.yaml') return 'minor';
  const key = row.split(' ')[0] ?? '';
  if (meaning.includes(key)) return 'major';
  if (key === 'containers' && column.startsWith('treatment')) return 'major';
  if (key === 'containers' && (column === 'block' || column.endsWith('unit'))) return 'major';
  return figures.includes(key) ? 'minor' : 'patch';
}
