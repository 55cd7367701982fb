import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import type { Solution } from '../nutrients/solution.ts';
import type { PageTable } from '../tables/page-table.ts';

/** The ratios by which recipes are compared. */
export function ratiosTable({ ratios }: Solution): PageTable {
  const { nitrogenToPotassium, cationPercent, anionPercent } = ratios;
  const parts = (values: readonly number[]): string =>
    values.map((value) => formatNumber(value, 0)).join(' : ');
  return {
    caption: say('Ratios'),
    columns: [
      { heading: say('Ratio'), numeric: false },
      { heading: say('Value'), numeric: true },
    ],
    rows: [
      {
        heading: say('N : K by weight'),
        cells: [
          nitrogenToPotassium === null ? say('unknown') : `${formatNumber(nitrogenToPotassium, 2)} : 1`,
        ],
      },
      {
        heading: say('K : Ca : Mg, percent of their sum in meq/L'),
        cells: [
          cationPercent ? parts([cationPercent.K, cationPercent.Ca, cationPercent.Mg]) : say('unknown'),
        ],
      },
      {
        heading: say('NO₃ : H₂PO₄ : SO₄, percent of their sum in meq/L'),
        cells: [
          anionPercent ? parts([anionPercent.NO3, anionPercent.H2PO4, anionPercent.SO4]) : say('unknown'),
        ],
      },
    ],
    notes: [],
  };
}
