import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import { explainDate } from '../date.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'wrong-date-in-row',
  severity: 'error',
  acceptable: false,
  title: 'Not a date in a row',
  meaning: 'Dates in the rows are written year-month-day too. Spreadsheets like to rewrite them on saving.',
  example: '"20.10.2025" is written day first; write year-month-day: 2025-10-20',
};
export default rule;

export function reportWrongDateInRow(
  report: Report,
  table: Table,
  row: CsvRow,
  text: string,
  where: string | null,
): void {
  const { fault, expected } = explainDate(text);
  report(rule, {
    file: table.file,
    place: table.place(row, 'date'),
    found: text,
    expected,
    message:
      text === ''
        ? say('date is empty; write year-month-day, such as 2025-10-20')
        : `${showText(text)} ${fault}`,
    where,
  });
}
