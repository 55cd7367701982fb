import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import type { Place } from '../../read/place.ts';
import { showText } from '../show-value.ts';
import { eachTextOfTables, type TextOfTable } from '../texts-of-tables.ts';

const rule: Rule = {
  rule: 'formula-in-text',
  severity: 'error',
  acceptable: false,
  title: 'Text that a spreadsheet would run',
  meaning:
    'A text that begins with =, +, - or @ is a formula to a spreadsheet. Whoever downloads the file could be shown an error, or harmed.',
  example: '"=HYPERLINK(1)" begins like a formula; begin it with a letter',
  check,
};
export default rule;

/** A dash alone, a dash before a word and plain signed numbers are run by no spreadsheet. */
const harmless = /^([-+]+|[-+]\d+([.,]\d+)?)$/;

function isFormula(text: string): boolean {
  const first = text.charCodeAt(0);
  // = + - @, and the tab that some spreadsheets skip before them.
  const isSuspect = first === 61 || first === 43 || first === 45 || first === 64;
  return isSuspect && text.length > 1 && !harmless.test(text);
}

function check(facts: Facts, report: Report): void {
  const look = ({
    file,
    text,
    place,
    where,
  }: Omit<TextOfTable, 'where'> & { where: string | null }): void => {
    if (!isFormula(text)) return;
    const message = say(
      '{found} begins like a formula, which a spreadsheet would run; begin it with a letter',
      { found: showText(text) },
    );
    report(rule, { file, place: place(), found: text, message, where });
  };
  eachTextOfTables(facts, look);
  const { metadata } = facts;
  for (const [index, { levels }] of (metadata.draft.factors ?? []).entries()) {
    for (const [number, { id }] of levels.entries()) {
      const place = (): Place => metadata.place(['factors', index, 'levels', number, 'id']);
      look({ file: 'trial.yaml', text: id, place, where: null });
    }
  }
}
