import type { CellChange } from './changed-cells.ts';

/** Which of a version's three numbers a release raises. */
export type Level = 'major' | 'minor' | 'patch';

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
  // What is likely, and to how fine a step the scale reads, tells nothing of what a weight means.
  if (key === 'variables') return ['lowest', 'highest', 'resolution'].includes(column) ? 'patch' : 'major';
  if (key === 'factors') return 'major';
  if (key === 'design') return column === 'seed' ? 'minor' : 'major';
  if (key === 'harvest') return column.endsWith('unit') ? 'major' : 'patch';
  if (key === 'containers' && /^(treatment|block)|unit$/.test(column)) return 'major';
  return figures.includes(key) ? 'minor' : 'patch';
}
