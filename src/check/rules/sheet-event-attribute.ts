import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'sheet-event-attribute',
  severity: 'error',
  acceptable: false,
  title: 'Event attribute in a fact sheet',
  meaning:
    'An attribute that begins with on would run code when a reader clicks or a picture loads. A fact sheet runs none.',
  example: '"onclick" of Photo would run code, which a fact sheet never does; leave it out',
};
export default rule;

export function reportSheetEventAttribute(
  report: Report,
  file: string,
  { place, found, detail }: SheetFault,
): void {
  report(rule, {
    file,
    place,
    found,
    message: say('{attribute} of {component} would run code, which a fact sheet never does; leave it out', {
      attribute: showText(found),
      component: detail,
    }),
  });
}
