import { formatBare } from '../compute/format/format-quantity.ts';
import { unitName } from '../compute/format/unit-name.ts';
import type { FigureTable } from '../model/figure.ts';
import { say } from '../model/say.ts';
import { cellsInBoth, columnsInBoth, headed } from './columns-in-both.ts';
import type { TreatmentRow } from './treatment-rows.ts';

/** The table twin of the weights by treatment: n, mean, interval and every single value. */
export function weightsTable(caption: string, rows: readonly TreatmentRow[], unit: string): FigureTable {
  const withInterval = rows.some(({ interval }) => interval !== null);
  const withAdjusted = rows.some(({ adjusted }) => adjusted !== null);
  const columns = (words: string) => columnsInBoth(words, unit);
  const cells = (value: number | undefined | null, digits: number) =>
    cellsInBoth(typeof value === 'number' ? formatBare(value, unit, digits) : null, unit);
  return {
    caption,
    columns: [
      { heading: say('Treatment'), numeric: false },
      { heading: 'n', numeric: true },
      ...columns(say('Mean')),
      ...(withAdjusted ? columns(say('Adjusted mean')) : []),
      ...(withInterval ? [...columns(say('Lower 95% limit')), ...columns(say('Upper 95% limit'))] : []),
      { heading: say('Not among them'), numeric: false },
      { heading: headed(say('Each value, ascending'), unitName(unit)), numeric: false },
    ],
    rows: rows.map(({ name, check, values, summary, interval, digits, lost, valueDigits }) => [
      check ? say('{name} (check)', { name }) : name,
      String(values.length),
      ...cells(summary?.mean, digits),
      ...(withAdjusted ? cells(interval?.centre, digits) : []),
      ...(withInterval ? [...cells(interval?.lower, digits), ...cells(interval?.upper, digits)] : []),
      lost.join(', '),
      [...values]
        .sort((a, b) => a - b)
        .map((value) => formatBare(value, unit, valueDigits).metric)
        .join(', '),
    ]),
  };
}
