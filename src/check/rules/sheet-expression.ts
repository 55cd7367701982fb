import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'sheet-expression',
  severity: 'error',
  acceptable: false,
  title: 'Code in braces in a fact sheet',
  meaning:
    'What stands in braces would be code. A fact sheet runs none: a number comes from a component, such as Value, and all else is written out.',
  example:
    '"{2 + 2}" is code, which a fact sheet never runs; write the words or a component, or \\{ to print a brace',
};
export default rule;

export function reportSheetExpression(report: Report, file: string, { place, found }: SheetFault): void {
  report(rule, {
    file,
    place,
    found,
    message: say(
      '{found} is code, which a fact sheet never runs; write the words or a component, or \\{ to print a brace',
      { found: showText(found) },
    ),
  });
}
