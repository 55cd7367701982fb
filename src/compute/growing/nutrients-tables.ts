import type { Findings } from '../../model/findings.ts';
import { formatNumber } from '../format/format-number.ts';
import { distinct, type PageTable } from '../tables/page-table.ts';
import { orNothing } from '../tables/treatment-summary.ts';

/** What the recipe amounts to: elements, charges, and conductivity by several formulas. None without a recipe. */
export function nutrientsTables({ nutrients }: Findings): PageTable[] {
  if (!nutrients) return [];
  const elements: PageTable = {
    caption: 'What the recipe amounts to, the source water’s own content included',
    columns: [
      { heading: 'Element or ion', numeric: false },
      { heading: 'In the solution', unit: 'mg/L', numeric: true },
    ],
    rows: Object.entries(nutrients.mg_per_L).map(([element, value]) => ({
      heading: element.replace('_', '-'),
      cells: [orNothing(value, (number) => formatNumber(number, 1))],
    })),
    notes: distinct([...nutrients.warnings, nutrients.reason]),
  };
  const sums: PageTable = {
    caption: 'Charges, and the conductivity to expect at 25 °C',
    columns: [
      { heading: 'What', numeric: false },
      { heading: 'Value', numeric: true },
      { heading: 'Unit', numeric: false },
    ],
    rows: [
      {
        heading: 'Cations',
        cells: [orNothing(nutrients.cations_meq, (value) => formatNumber(value, 2)), 'meq/L'],
      },
      {
        heading: 'Anions',
        cells: [orNothing(nutrients.anions_meq, (value) => formatNumber(value, 2)), 'meq/L'],
      },
      ...nutrients.ec_estimates.map(({ formula, value }) => ({
        heading: `EC: ${formula}`,
        cells: [orNothing(value, (number) => formatNumber(number, 2)), 'mS/cm'],
      })),
    ],
    notes: [],
  };
  return [elements, sums];
}
