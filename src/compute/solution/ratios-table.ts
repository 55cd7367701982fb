import { formatNumber } from '../format/format-number.ts';
import type { Solution } from '../nutrients/solution.ts';
import type { PageTable } from '../tables/page-table.ts';

/** The ratios by which recipes are compared. */
export function ratiosTable({ ratios }: Solution): PageTable {
  const { nitrogenToPotassium, cationPercent, anionPercent } = ratios;
  const parts = (values: readonly number[]): string =>
    values.map((value) => formatNumber(value, 0)).join(' : ');
  return {
    caption: 'Ratios',
    columns: [
      { heading: 'Ratio', numeric: false },
      { heading: 'Value', numeric: true },
    ],
    rows: [
      {
        heading: 'N : K by weight',
        cells: [nitrogenToPotassium === null ? 'unknown' : `${formatNumber(nitrogenToPotassium, 2)} : 1`],
      },
      {
        heading: 'K : Ca : Mg, percent of their sum in meq/L',
        cells: [cationPercent ? parts([cationPercent.K, cationPercent.Ca, cationPercent.Mg]) : 'unknown'],
      },
      {
        heading: 'NO₃ : H₂PO₄ : SO₄, percent of their sum in meq/L',
        cells: [anionPercent ? parts([anionPercent.NO3, anionPercent.H2PO4, anionPercent.SO4]) : 'unknown'],
      },
    ],
    notes: [],
  };
}
