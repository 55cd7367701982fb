import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';
import type { Table } from '../table.ts';

const rule: Rule = {
  rule: 'count-not-whole',
  severity: 'error',
  acceptable: false,
  title: 'Count that is not whole',
  meaning:
    'What is counted comes in whole numbers. A part means that the value was measured, or stands in the wrong column.',
  example: 'leaves is counted, so "12.5" cannot be; write a whole number',
};
export default rule;

export function reportCountNotWhole(
  report: Report,
  table: Table,
  row: CsvRow,
  cell: { name: string; text: string; where: string },
): void {
  const { name, text, where } = cell;
  const message = say('{column} is counted, so {found} cannot be; write a whole number', {
    column: table.heading(name),
    found: showText(text),
  });
  const place = table.place(row, name);
  report(rule, { file: table.file, place, found: text, expected: say('a whole number'), message, where });
}
