import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'sheet-expression-attribute',
  severity: 'error',
  acceptable: false,
  title: 'Attribute in braces',
  meaning:
    'A value in braces would be code. The value of an attribute is text in double quotes, whatever it says.',
  example:
    'digits of Value has its value in braces, which would be code; write it in double quotes, such as digits="0"',
};
export default rule;

export function reportSheetExpressionAttribute(
  report: Report,
  file: string,
  { place, found, detail }: SheetFault,
): void {
  report(rule, {
    file,
    place,
    found,
    message: say(
      '{attribute} of {component} has its value in braces, which would be code; write it in double quotes, such as {name}="..."',
      { attribute: showText(found), component: detail, name: found },
    ),
  });
}
