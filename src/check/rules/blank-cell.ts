import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';

const rule: Rule = {
  rule: 'blank-cell',
  severity: 'error',
  acceptable: false,
  title: 'Blank cell',
  meaning: 'A cell that the trial cannot be read without is empty.',
  example: 'cultivar is empty; every position of the layout has a treatment',
};
export default rule;

export function reportBlankCell(
  report: Report,
  table: Table,
  row: CsvRow,
  name: string,
  why: string,
  where: string,
): void {
  const message = say('{column} is empty; {why}', { column: table.heading(name), why });
  report(rule, { file: table.file, place: table.place(row, name), found: '', message, where });
}
