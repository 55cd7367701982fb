import { formatBare } from '../compute/format/format-quantity.ts';
import { unitName } from '../compute/format/unit-name.ts';
import { usUnit } from '../compute/format/us-unit.ts';
import type { FigureTable } from '../model/figure.ts';
import { say } from '../model/say.ts';
import { headed } from './position-table.ts';
import type { TreatmentRow } from './treatment-rows.ts';

/** The table twin of the weights by treatment: n, mean, interval and every single value. */
export function weightsTable(caption: string, rows: readonly TreatmentRow[], unit: string): FigureTable {
  const us = usUnit(unit);
  const metric = unitName(unit);
  const withInterval = rows.some(({ interval }) => interval !== null);
  const withAdjusted = rows.some(({ adjusted }) => adjusted !== null);
  const numeric = (heading: string) => ({ heading, numeric: true });
  const both = (value: number | undefined | null, digits: number) => {
    if (typeof value !== 'number') return us ? ['', ''] : [''];
    const printed = formatBare(value, unit, digits);
    return us ? [printed.metric, printed.us ?? ''] : [printed.metric];
  };
  const pair = (words: string) => [
    numeric(headed(words, metric)),
    ...(us ? [numeric(headed(words, us.unit))] : []),
  ];
  return {
    caption,
    columns: [
      { heading: say('Treatment'), numeric: false },
      numeric('n'),
      ...pair(say('Mean')),
      ...(withAdjusted ? pair(say('Adjusted mean')) : []),
      ...(withInterval ? [...pair(say('Lower 95% limit')), ...pair(say('Upper 95% limit'))] : []),
      { heading: say('Not among them'), numeric: false },
      { heading: headed(say('Each value, ascending'), metric), numeric: false },
    ],
    rows: rows.map(({ name, check, values, summary, interval, digits, lost, valueDigits }) => [
      check ? say('{name} (check)', { name }) : name,
      String(values.length),
      ...both(summary?.mean, digits),
      ...(withAdjusted ? both(interval?.centre, digits) : []),
      ...(withInterval ? [...both(interval?.lower, digits), ...both(interval?.upper, digits)] : []),
      lost.join(', '),
      [...values]
        .sort((a, b) => a - b)
        .map((value) => formatBare(value, unit, valueDigits).metric)
        .join(', '),
    ]),
  };
}
