import { joinWords, type Words } from '../compute/words/words.ts';
import type { Figure } from '../model/figure.ts';
import { say } from '../model/say.ts';
import { type IntervalRow, intervalRows } from './interval-rows.ts';
import { intervalTable } from './interval-table.ts';

/** More differences than this make a picture that nobody reads; the largest are drawn, and the title says so. */
export const mostDifferences = 45;

/** A figure of differences with their intervals and a line at zero, and its table. */
export function differenceFigure(
  { id, title, kind }: { id: string; title: string; kind: 'differences' | 'against-check' },
  rows: readonly IntervalRow[],
  unit: string,
  digits: number,
): Figure {
  const [first, zero] =
    kind === 'differences'
      ? [say('Difference'), say('An interval that crosses the line at zero allows for no difference.')]
      : [say('Treatment'), say('The line at zero is the check.')];
  const description = [...sayRows(rows), ` ${zero}`];
  return {
    id,
    title,
    description,
    svg: intervalRows({ id, title, description, kind }, rows, unit),
    table: intervalTable(title, first, rows, unit, digits),
  };
}

/** The first rows in a sentence each. */
function sayRows(rows: readonly IntervalRow[]): Words {
  const said = rows
    .slice(0, 6)
    .map(({ name, estimate, limits }): Words => [`${name}: `, estimate, ' (', limits, ').']);
  if (rows.length > 6) said.push([say('{count} more in the table.', { count: rows.length - 6 })]);
  return joinWords(said, ' ');
}
