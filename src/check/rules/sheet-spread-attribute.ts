import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'sheet-spread-attribute',
  severity: 'error',
  acceptable: false,
  title: 'Attributes from code',
  meaning:
    'Three dots in braces would take attributes from code. A fact sheet runs none: each attribute is written out with its value in double quotes.',
  example:
    '"{...more}" of Value is code, which a fact sheet never runs; write each attribute out as name="value"',
};
export default rule;

export function reportSheetSpreadAttribute(
  report: Report,
  file: string,
  { place, found, detail }: SheetFault,
): void {
  report(rule, {
    file,
    place,
    found,
    message: say(
      '{attribute} of {component} is code, which a fact sheet never runs; write each attribute out as name="value"',
      { attribute: showText(`{${found}}`), component: detail },
    ),
  });
}
