import type { Harvest } from '../check/facts.ts';
import { trimmed } from '../check/number.ts';
import type { TrialMetadata } from '../model/trial.ts';
import type { CsvRow } from '../read/csv.ts';
import type { OpenRemark, PlaceRecord } from './weigh-state.ts';

/** What a folder's harvest.csv holds before anything is weighed. */
export interface GivenRows {
  /** The rows with a value or a status, with the very digits that stand there. */
  given: readonly PlaceRecord[];
  /** The remarks of rows that were written beforehand, to be filled in. */
  remarks: readonly OpenRemark[];
}

/** Reads what the rows of a folder's harvest.csv say already. */
export function givenRows({ table, records }: Harvest, { variables }: TrialMetadata): GivenRows {
  const rows = new Map<number, CsvRow>();
  table.csv.read((row) => rows.set(row.line, row));
  const given: PlaceRecord[] = [];
  const remarks: OpenRemark[] = [];
  for (const { container, row, column, plant, cut, status, line } of records) {
    const cell = (name: string): string => {
      const index = table.index.get(name);
      return index === undefined ? '' : trimmed(rows.get(line)?.cells[index] ?? '');
    };
    const values = Object.fromEntries(variables.map(({ id }) => [id, cell(id)]));
    const place = { container, row, column, plant };
    const [potTotal, remark] = [cell('pot_total'), cell('remark')];
    const isBlank = Object.values(values).every((text) => text === '') && cell('status') === '';
    if (!isBlank || potTotal !== '')
      given.push({ place, cut, date: cell('date'), status, values, potTotal, remark, kept: [] });
    else if (remark !== '') remarks.push({ place, cut, remark });
  }
  return { given, remarks };
}
