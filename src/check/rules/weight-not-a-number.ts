import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import { explainNumber } from '../explain-number.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'weight-not-a-number',
  severity: 'error',
  acceptable: false,
  title: 'Weight that is not a number',
  meaning:
    'A weight is written in digits, with the decimal mark that trial.yaml declares, and nothing else: no unit, no letters, no separators.',
  example: '"12O" is not a number; write digits only, such as 120',
};
export default rule;

export function reportWeightNotANumber(
  report: Report,
  table: Table,
  row: CsvRow,
  name: string,
  text: string,
  where: string,
): void {
  const { fault, expected } = explainNumber(text, table.decimal);
  report(rule, {
    file: table.file,
    place: table.place(row, name),
    found: text,
    expected,
    message: `${showText(text)} ${fault}`,
    where,
  });
}
