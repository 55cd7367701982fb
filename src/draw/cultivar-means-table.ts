import { digitsAcrossSeasons } from '../compute/format/digits-across-seasons.ts';
import { formatBare } from '../compute/format/format-quantity.ts';
import { formatLimits } from '../compute/format/format-range.ts';
import { seasonNames } from '../compute/format/season-names.ts';
import type { FigureTable } from '../model/figure.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import { cellsInBoth, columnsInBoth } from './columns-in-both.ts';
import type { CultivarRow } from './cultivar-rows.ts';
import { say } from '../model/say.ts';

/** The table twin of the cultivars' means: a row for each dot, then one for the adjusted mean. */
export function cultivarMeansTable(
  caption: string,
  entry: Seasons,
  rows: readonly CultivarRow[],
  name: (cultivar: string) => string,
): FigureTable {
  const { unit } = entry;
  const digits = digitsAcrossSeasons(entry);
  const seasons = seasonNames(entry.trials);
  const blank = cellsInBoth(null, unit);
  const limits = (lower: number | null, upper: number | null) => {
    if (lower === null || upper === null) return [...blank, ...blank];
    const both = formatLimits(lower, upper, unit, digits);
    return [...cellsInBoth(both.lower, unit), ...cellsInBoth(both.upper, unit)];
  };
  return {
    caption,
    columns: [
      { heading: say('Cultivar'), numeric: false },
      { heading: say('Trial'), numeric: false },
      ...columnsInBoth(say('Mean'), unit),
      ...columnsInBoth(say('Lower 95% limit'), unit),
      ...columnsInBoth(say('Upper 95% limit'), unit),
    ],
    rows: rows.flatMap(({ cultivar, adjusted, cells }) => [
      ...cells.map((cell) => [
        name(cultivar),
        seasons.get(cell.trial)!,
        ...cellsInBoth(formatBare(cell.mean, unit, digits), unit),
        ...blank,
        ...blank,
      ]),
      [
        name(cultivar),
        say('adjusted over its trials'),
        ...cellsInBoth(formatBare(adjusted.mean, unit, digits), unit),
        ...limits(adjusted.lower, adjusted.upper),
      ],
    ]),
  };
}
