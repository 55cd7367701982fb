import { formatBare } from '../compute/format/format-quantity.ts';
import { unitName } from '../compute/format/unit-name.ts';
import { usUnit } from '../compute/format/us-unit.ts';
import type { FigureTable } from '../model/figure.ts';
import { say } from '../model/say.ts';
import type { Position } from '../model/trial.ts';
import type { PotOutcome } from './pot-outcome.ts';

interface TableOptions {
  unit: string;
  variable: string;
  digits: number;
  cuts: readonly number[];
  nameOf: (outcome: PotOutcome) => string;
}

/** A column's heading with its unit in brackets. */
export function headed(words: string, unit: string): string {
  return unit === '' ? words : `${words} (${unit})`;
}

/** Where a pot stood, in words. */
export function placeName({ row, column }: Pick<Position, 'row' | 'column'>): string {
  return say('row {row}, column {column}', { row, column });
}

/** The table twin of a position map: one row a pot, with each cut where there are several. */
export function positionTable(
  caption: string,
  outcomes: readonly PotOutcome[],
  { unit, variable, digits, cuts, nameOf }: TableOptions,
): FigureTable {
  const us = usUnit(unit);
  const metric = unitName(unit);
  const several = cuts.length > 1;
  const total = several ? say('{variable}, all cuts', { variable }) : variable;
  const numbers = (value: number | null) => {
    if (value === null) return us ? ['', ''] : [''];
    const both = formatBare(value, unit, digits);
    return us ? [both.metric, both.us ?? ''] : [both.metric];
  };
  return {
    caption,
    columns: [
      { heading: say('Position'), numeric: false },
      { heading: say('Treatment'), numeric: false },
      ...(several
        ? cuts.map((cut) => ({ heading: headed(say('Cut {cut}', { cut }), metric), numeric: true }))
        : []),
      { heading: headed(total, metric), numeric: true },
      ...(us ? [{ heading: headed(total, us.unit), numeric: true }] : []),
      { heading: say('Status'), numeric: false },
    ],
    rows: outcomes.map((outcome) => [
      placeName(outcome.position),
      nameOf(outcome),
      ...(several
        ? outcome.byCut.map((value) => (value === null ? '' : formatBare(value, unit, digits).metric))
        : []),
      ...numbers(outcome.value),
      outcome.statuses.map((status) => say(status)).join(', '),
    ]),
  };
}
