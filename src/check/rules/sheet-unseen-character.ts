import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'sheet-unseen-character',
  severity: 'error',
  acceptable: false,
  title: 'Character in a fact sheet that nobody sees',
  meaning:
    'Characters that show nothing, and those that turn the direction of the text, make a sheet read otherwise than it is written: a number could be shown that no check has read.',
  example: 'the sheet holds "\\u{202e}", which nobody sees; delete it, or type the words anew',
};
export default rule;

export function reportSheetUnseenCharacter(report: Report, file: string, { place, found }: SheetFault): void {
  const message = say('the sheet holds {found}, which nobody sees; delete it, or type the words anew', {
    found: showText(found),
  });
  report(rule, { file, place, found, message });
}
