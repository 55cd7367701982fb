import type { Findings } from '../../model/findings.ts';
import { formatBare } from '../format/format-quantity.ts';
import { unitInBoth } from '../format/unit-in-both.ts';
import { distinct, type PageTable } from '../tables/page-table.ts';
import { orNothing } from '../tables/treatment-summary.ts';

/** Water used by each container; null where nothing was read. */
export function waterTable(findings: Findings): PageTable | null {
  const { water } = findings;
  if (water.length === 0) return null;
  const litres = (value: number | null, unit: string, digits: number) =>
    orNothing(value, (number) => formatBare(number, unit, digits));
  return {
    caption: `Water used: ${distinct(water.map(({ method }) => method)).join('; ')}`,
    columns: [
      { heading: 'Container', numeric: false },
      { heading: 'Water used', unit: unitInBoth('L'), numeric: true },
      { heading: 'Uncertain by', unit: unitInBoth('L'), numeric: true },
      { heading: 'Water by fresh weight', unit: unitInBoth('L/kg'), numeric: true },
    ],
    rows: water.map((each) => ({
      heading: each.container,
      cells: [
        litres(each.used_L, 'L', 1),
        litres(each.uncertainty_L ?? null, 'L', 1),
        litres(each.L_per_kg, 'L/kg', 1),
      ],
    })),
    notes: distinct(water.map(({ reason }) => reason)),
  };
}
