import { formatBare } from '../compute/format/format-quantity.ts';
import { formatLimits } from '../compute/format/format-range.ts';
import type { FigureTable } from '../model/figure.ts';
import { say } from '../model/say.ts';
import { cellsInBoth, columnsInBoth } from './columns-in-both.ts';
import type { IntervalRow } from './interval-rows.ts';

/** The table twin of estimates with intervals. */
export function intervalTable(
  caption: string,
  first: string,
  rows: readonly IntervalRow[],
  unit: string,
  digits: number,
): FigureTable {
  return {
    caption,
    columns: [
      { heading: first, numeric: false },
      ...columnsInBoth(say('Estimate'), unit),
      ...columnsInBoth(say('Lower 95% limit'), unit),
      ...columnsInBoth(say('Upper 95% limit'), unit),
      { heading: say('Beside it'), numeric: false },
    ],
    rows: rows.map(({ name, centre, lower, upper, aside }) => {
      const limits = formatLimits(lower, upper, unit, digits, { plus: true });
      return [
        name,
        ...cellsInBoth(formatBare(centre, unit, digits, { plus: true }), unit),
        ...cellsInBoth(limits.lower, unit),
        ...cellsInBoth(limits.upper, unit),
        aside,
      ];
    }),
  };
}
