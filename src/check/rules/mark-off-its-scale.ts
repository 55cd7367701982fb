import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';
import type { Table } from '../table.ts';

const rule: Rule = {
  rule: 'mark-off-its-scale',
  severity: 'error',
  acceptable: false,
  title: 'Mark that its scale does not have',
  meaning:
    'The variable says what its marks are: those under marks in trial.yaml, 1 and 0 for yes or no, whole numbers from 0 to 99 for BBCH codes. Another mark is a slip, or a mark that trial.yaml still lacks.',
  example: 'tip_burn is "7", which is none of its marks; write one of 0, 1, 2, 3',
};
export default rule;

export function reportMarkOffItsScale(
  report: Report,
  table: Table,
  row: CsvRow,
  cell: { name: string; text: string; marks: string; where: string },
): void {
  const { name, text, marks, where } = cell;
  const message = say('{column} is {found}, which is none of its marks; write {marks}', {
    column: table.heading(name),
    found: showText(text),
    marks,
  });
  const place = table.place(row, name);
  report(rule, { file: table.file, place, found: text, expected: marks, message, where });
}
