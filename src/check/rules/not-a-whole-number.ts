import { say } from '../../model/say.ts';
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
  const column = table.heading(name);
  const found = showText(text);
  const number = text === '' || /^[\d.,-]+$/.test(text) ? null : numberMeant(text);
  const message =
    text === ''
      ? say('{column} is empty, but must be a whole number from 1', { column })
      : number === null
        ? say('{column} is {found}, but must be a whole number from 1', { column, found })
        : say('{column} is {found}, but must be a whole number from 1; write {number}', {
            column,
            found,
            number,
          });
  report(rule, {
    file: table.file,
    place: table.place(row, name),
    found: text,
    expected: say('a whole number from 1'),
    message,
  });
}

/** The whole number that a text was meant for; null where that cannot be told. */
function numberMeant(text: string): string | null {
  const { fault, expected } = explainNumber(text, '.');
  return expected !== null && /^[1-9]\d*$/.test(expected) && !/^\d/.test(fault) ? expected : null;
}
