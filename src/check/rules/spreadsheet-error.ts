import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';
import { eachTextOfTables } from '../texts-of-tables.ts';

const rule: Rule = {
  rule: 'spreadsheet-error',
  severity: 'warning',
  acceptable: true,
  title: 'Error of a spreadsheet in place of a text',
  meaning:
    'A formula that failed, or a column too narrow to show its content, was saved in place of what stood there. What it was stands in the spreadsheet or the notebook.',
  example: '"#REF!" is an error of a spreadsheet; write what stood there, or empty the cell',
  check,
};
export default rule;

/** The errors of spreadsheets, which some programs write in their own language, and a column too narrow. */
const errors = /^(#{3,}|#[¡¿]?\p{Lu}[\p{Lu}\d/._ ]*[!?]?)$/u;

function check(facts: Facts, report: Report): void {
  eachTextOfTables(facts, ({ file, text, place, where }) => {
    if (!text.startsWith('#') || !errors.test(text)) return;
    const message = say('{found} is an error of a spreadsheet; write what stood there, or empty the cell', {
      found: showText(text),
    });
    report(rule, { file, place: place(), found: text, message, where });
  });
}
