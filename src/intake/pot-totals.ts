import { showText } from '../check/show-value.ts';
import { say } from '../model/say.ts';
import type { GridCell } from './grid.ts';
import type { PlantValues } from './line-values.ts';
import { keys } from './mapping.ts';
import type { SaidOfLine } from './read-line.ts';
import type { TableReading } from './table-reading.ts';
import type { TakenRow } from './take-rows.ts';

const ofPot = ['container', 'row', 'column', 'cut'] as const;

/** The pot's total of each plant's row: on the first row of the pot and cut that it is of. */
export function totalsOf(
  table: TableReading,
  said: SaidOfLine,
  plants: readonly PlantValues[],
  first: GridCell,
): TakenRow['potTotal'][] {
  const totals: TakenRow['potTotal'][] = plants.map(() => null);
  for (const { at, digits, unit } of said.potTotals) {
    const isOf = (plant: PlantValues): boolean =>
      keys.every((key) => at[key] === undefined || at[key] === plant.at[key]);
    const pots = new Set(
      plants.filter(isOf).map((plant) => ofPot.map((key) => plant.at[key] ?? '').join(' ')),
    );
    const index = plants.findIndex(isOf);
    if (pots.size === 1 && totals[index] === null) {
      totals[index] = { digits, unit };
      continue;
    }
    const message = say('{found} is a total, and it is not clear of which pot and cut in this row.', {
      found: showText(digits),
    });
    table.fault('spreadsheet-value', first, message, digits);
  }
  return totals;
}
