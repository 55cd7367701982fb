import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'sheet-import',
  severity: 'error',
  acceptable: false,
  title: 'Import or export in a fact sheet',
  meaning:
    'A fact sheet is text: nothing of it is ever run, so it cannot fetch other files or define anything. What the program offers is there without being imported.',
  example: '"import Chart from ..." is code, which a fact sheet never runs; leave the line out',
};
export default rule;

export function reportSheetImport(report: Report, file: string, { place, found, detail }: SheetFault): void {
  report(rule, {
    file,
    place,
    found,
    message: say(
      '{found} is code, which a fact sheet never runs; leave the line out, or begin the sentence with another word than {word}',
      { found: showText(found), word: detail },
    ),
  });
}
