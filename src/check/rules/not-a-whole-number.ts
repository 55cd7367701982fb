import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import { explainNumber } from '../explain-number.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'not-a-whole-number',
  severity: 'error',
  acceptable: false,
  title: 'Not a whole number from 1',
  meaning: 'Rows, columns, cuts and plants are counted 1, 2, 3.',
  example: 'row is "2.0", but must be a whole number from 1',
};
export default rule;

export function reportNotAWholeNumber(
  report: Report,
  table: Table,
  row: CsvRow,
  name: string,
  text: string,
): void {
  const expected = 'a whole number from 1';
  const fault = explainNumber(text, '.');
  const advice =
    fault.expected !== null && /^[1-9]\d*$/.test(fault.expected) && !/^\d/.test(fault.fault)
      ? `; write ${fault.expected}`
      : '';
  const is = text === '' ? 'is empty' : `is ${showText(text)}`;
  report(rule, {
    file: table.file,
    place: table.place(row, name),
    found: text,
    expected,
    message: `${table.heading(name)} ${is}, but must be ${expected}${text === '' || /^[\d.,-]+$/.test(text) ? '' : advice}`,
  });
}
