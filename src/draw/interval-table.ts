import { formatBare, type InBothUnits } from '../compute/format/format-quantity.ts';
import { formatLimits } from '../compute/format/format-range.ts';
import { unitName } from '../compute/format/unit-name.ts';
import { usUnit } from '../compute/format/us-unit.ts';
import type { FigureTable } from '../model/figure.ts';
import { say } from '../model/say.ts';
import type { IntervalRow } from './interval-rows.ts';
import { headed } from './position-table.ts';

/** The table twin of estimates with intervals. */
export function intervalTable(
  caption: string,
  first: string,
  rows: readonly IntervalRow[],
  unit: string,
  digits: number,
): FigureTable {
  const us = usUnit(unit);
  const pair = (words: string) => [
    { heading: headed(words, unitName(unit)), numeric: true },
    ...(us ? [{ heading: headed(words, us.unit), numeric: true }] : []),
  ];
  const pairOf = (both: InBothUnits) => (us ? [both.metric, both.us ?? ''] : [both.metric]);
  return {
    caption,
    columns: [
      { heading: first, numeric: false },
      ...pair(say('Estimate')),
      ...pair(say('Lower 95% limit')),
      ...pair(say('Upper 95% limit')),
      { heading: say('Beside it'), numeric: false },
    ],
    rows: rows.map(({ name, centre, lower, upper, aside }) => {
      const limits = formatLimits(lower, upper, unit, digits, { plus: true });
      return [
        name,
        ...pairOf(formatBare(centre, unit, digits, { plus: true })),
        ...pairOf(limits.lower),
        ...pairOf(limits.upper),
        aside,
      ];
    }),
  };
}
