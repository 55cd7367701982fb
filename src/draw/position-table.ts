import { formatBare } from '../compute/format/format-quantity.ts';
import type { FigureTable } from '../model/figure.ts';
import { say } from '../model/say.ts';
import type { Position } from '../model/trial.ts';
import { cellsInBoth, columnsInBoth } from './columns-in-both.ts';
import type { PotOutcome } from './pot-outcome.ts';

interface TableOptions {
  unit: string;
  variable: string;
  digits: number;
  cuts: readonly number[];
  nameOf: (outcome: PotOutcome) => string;
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
  const cells = (value: number | null) =>
    cellsInBoth(value === null ? null : formatBare(value, unit, digits), unit);
  const several = cuts.length > 1;
  const total = several ? say('{variable}, all cuts', { variable }) : variable;
  return {
    caption,
    columns: [
      { heading: say('Position'), numeric: false },
      { heading: say('Treatment'), numeric: false },
      ...(several ? cuts.flatMap((cut) => columnsInBoth(say('Cut {cut}', { cut }), unit)) : []),
      ...columnsInBoth(total, unit),
      { heading: say('Status'), numeric: false },
    ],
    rows: outcomes.map((outcome) => [
      placeName(outcome.position),
      nameOf(outcome),
      ...(several ? outcome.byCut.flatMap((value) => cells(value)) : []),
      ...cells(outcome.value),
      outcome.statuses.map((status) => say(status)).join(', '),
    ]),
  };
}
