import type { Status } from '../model/trial.ts';
import type { CsvRow } from '../read/csv.ts';
import { whereOf } from './grid.ts';
import type { ValueColumn } from './harvest-columns.ts';
import { trimmed } from './number.ts';
import type { Spot } from './position-cells.ts';
import type { Report } from './rule.ts';
import { reportCountNotWhole } from './rules/count-not-whole.ts';
import { reportMarkOffItsScale } from './rules/mark-off-its-scale.ts';
import { reportNoWeightNoStatus } from './rules/no-weight-no-status.ts';
import { reportValueNotANumber } from './rules/value-not-a-number.ts';
import { reportWeightBesideStatus } from './rules/weight-beside-status.ts';
import { reportWeightNotANumber } from './rules/weight-not-a-number.ts';
import { reportZeroWithoutStatus } from './rules/zero-without-status.ts';
import type { Table } from './table.ts';

type Values = Record<string, number | null>;

/**
 * A reader of a row's values. The first column is the primary one: it needs a weight or a status (where the
 * trial is finished). A null status is one that could not be read, from which nothing is concluded.
 */
export function valuesReader(
  table: Table,
  columns: readonly ValueColumn[],
  needsWeight: boolean,
  report: Report,
): (row: CsvRow, spot: Spot, status: Status | null, statusText: string) => Values {
  const indexes = columns.map(({ name }) => table.index.get(name) ?? -1);
  return (row, spot, status, statusText) => {
    const values: Values = {};
    for (let index = 0; index < columns.length; index += 1) {
      const column = columns[index]!;
      const text = trimmed(row.cells[indexes[index]!] ?? '');
      const isPrimary = index === 0;
      if (text === '') {
        values[column.name] = null;
        if (isPrimary && needsWeight && status === 'weighed') {
          reportNoWeightNoStatus(report, table, row, column.name, statusText, whereOf(spot));
        }
        continue;
      }
      const value = column.parse(text);
      values[column.name] = value;
      if (status !== null && status !== 'weighed' && (isPrimary || column.isWeight)) {
        const cell = { name: column.name, text, status, where: whereOf(spot) };
        reportWeightBesideStatus(report, table, row, cell);
      } else if (value === null) {
        const sayNotANumber = column.isWeight ? reportWeightNotANumber : reportValueNotANumber;
        sayNotANumber(report, table, row, column.name, text, whereOf(spot));
      } else if (column.isCount && !Number.isInteger(value)) {
        reportCountNotWhole(report, table, row, { name: column.name, text, where: whereOf(spot) });
      } else if (column.scale !== null && !column.scale.has(value)) {
        const cell = { name: column.name, text, marks: column.scale.words, where: whereOf(spot) };
        reportMarkOffItsScale(report, table, row, cell);
      } else if (value === 0 && isPrimary && column.isWeight && needsWeight && statusText === '') {
        reportZeroWithoutStatus(report, table, row, column.name, text, whereOf(spot));
      }
    }
    return values;
  };
}
