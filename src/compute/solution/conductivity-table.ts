import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import { type EcEstimate, ecRange } from '../nutrients/ec-estimates.ts';
import type { Solution } from '../nutrients/solution.ts';
import type { PageTable } from '../tables/page-table.ts';

/** A measured conductivity to stand beside the estimates, mS/cm. */
export interface Measured {
  /** Where and when, to head its row. */
  heading: string;
  lowest: number;
  highest: number;
}

/** The conductivity to expect by each formula, their range, and what was measured beside it. */
export function conductivityTable({ ec }: Pick<Solution, 'ec'>, measured: readonly Measured[]): PageTable {
  return {
    caption: say('Conductivity (EC) to expect at 25 °C, by published formulas'),
    columns: [
      { heading: say('By'), numeric: false },
      { heading: say('EC'), unit: 'mS/cm', numeric: true },
    ],
    rows: [
      ...ec.map(({ formula, value }) => ({
        heading: formula,
        cells: [value === null ? say('unknown') : formatNumber(value, 2)],
      })),
      { heading: say('Range of the estimates'), cells: [rangeInWords(ec) ?? say('unknown')] },
      ...measured.map(({ heading, lowest, highest }) => ({ heading, cells: [spanInWords(lowest, highest)] })),
    ],
    notes: [],
  };
}

/** The range of the estimates, "1.63 to 1.74"; null where none is known. */
export function rangeInWords(estimates: readonly EcEstimate[]): string | null {
  const range = ecRange(estimates);
  return range && spanInWords(range.lowest, range.highest);
}

function spanInWords(lowest: number, highest: number): string {
  const [from, to] = [formatNumber(lowest, 2), formatNumber(highest, 2)];
  return from === to ? from : say('{from} to {to}', { from, to });
}
