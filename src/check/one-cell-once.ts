import type { Problem } from '../model/problem.ts';

/** Rules that say of one weight in their own ways that it is unlike what it should be; the first says most. */
const byWeight = [
  'container-total',
  'unit-mixed-up',
  'outside-the-range',
  'unlikely-spread',
  'off-the-scale',
] as const;

/**
 * The problems, a weight that several rules find odd told by the one that says most of it.
 *
 * @param isHeeded true for a rule of which single problems are accepted, so that they have to stand
 */
export function oneCellOnce(problems: readonly Problem[], isHeeded: (rule: string) => boolean): Problem[] {
  const best = new Map<string, number>();
  for (const problem of problems) {
    const rank = rankOf(problem);
    const cell = cellOf(problem);
    if (rank !== -1 && rank < (best.get(cell) ?? Infinity)) best.set(cell, rank);
  }
  return problems.filter((problem) => {
    const rank = rankOf(problem);
    return rank === -1 || rank === best.get(cellOf(problem)) || isHeeded(problem.rule);
  });
}

const rankOf = ({ rule, file }: Problem): number =>
  file.endsWith('harvest.csv') ? (byWeight as readonly string[]).indexOf(rule) : -1;

const cellOf = ({ file, line, column }: Problem): string => `${file}:${String(line)}:${String(column)}`;
