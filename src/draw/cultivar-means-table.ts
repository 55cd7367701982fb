import { digitsAcrossSeasons } from '../compute/format/digits-across-seasons.ts';
import { formatBare, type InBothUnits } from '../compute/format/format-quantity.ts';
import { formatLimits } from '../compute/format/format-range.ts';
import { seasonNames } from '../compute/format/season-names.ts';
import { unitName } from '../compute/format/unit-name.ts';
import { usUnit } from '../compute/format/us-unit.ts';
import type { FigureTable } from '../model/figure.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import type { CultivarRow } from './cultivar-rows.ts';
import { headed } from './position-table.ts';
import { say } from '../model/say.ts';

/** The table twin of the cultivars' means: a row for each dot, then one for the adjusted mean. */
export function cultivarMeansTable(
  caption: string,
  entry: Seasons,
  rows: readonly CultivarRow[],
  name: (cultivar: string) => string,
): FigureTable {
  const us = usUnit(entry.unit);
  const digits = digitsAcrossSeasons(entry);
  const seasons = seasonNames(entry.trials);
  const pair = (words: string) => [
    { heading: headed(words, unitName(entry.unit)), numeric: true },
    ...(us ? [{ heading: headed(words, us.unit), numeric: true }] : []),
  ];
  const pairOf = (both: InBothUnits) => (us ? [both.metric, both.us ?? ''] : [both.metric]);
  const blank = us ? ['', ''] : [''];
  const limits = (lower: number | null, upper: number | null) => {
    if (lower === null || upper === null) return [...blank, ...blank];
    const both = formatLimits(lower, upper, entry.unit, digits);
    return [...pairOf(both.lower), ...pairOf(both.upper)];
  };
  return {
    caption,
    columns: [
      { heading: say('Cultivar'), numeric: false },
      { heading: say('Trial'), numeric: false },
      ...pair(say('Mean')),
      ...pair(say('Lower 95% limit')),
      ...pair(say('Upper 95% limit')),
    ],
    rows: rows.flatMap(({ cultivar, adjusted, cells }) => [
      ...cells.map((cell) => [
        name(cultivar),
        seasons.get(cell.trial)!,
        ...pairOf(formatBare(cell.mean, entry.unit, digits)),
        ...blank,
        ...blank,
      ]),
      [
        name(cultivar),
        say('adjusted over its trials'),
        ...pairOf(formatBare(adjusted.mean, entry.unit, digits)),
        ...limits(adjusted.lower, adjusted.upper),
      ],
    ]),
  };
}
