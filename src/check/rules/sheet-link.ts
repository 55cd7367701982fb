import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'sheet-link',
  severity: 'error',
  acceptable: false,
  title: 'Link that a fact sheet may not have',
  meaning:
    'A link leads to a page: one with http or https, an e-mail address with mailto, a page of this site or a heading of the sheet. Any other could run code or lead where nobody expects.',
  example:
    '"javascript:alert(1)" is no address of a page; write one that begins with https://, or with / for a page of this site',
};
export default rule;

/** True for the name of a file such as lies in the folder of a trial. */
const isFileName = (found: string): boolean =>
  /^(?:\.\/)?[\w-]+\.(?:csv|yaml|json|xlsx|parquet|R)$/i.test(found);

export function reportSheetLink(report: Report, file: string, { place, found, detail }: SheetFault): void {
  const message =
    detail === 'no words'
      ? say('the link to {found} has no words; write [its name](its address)', { found: showText(found) })
      : found === ''
        ? say(
            'an empty address is no address that a link may have; write one that begins with https://, http:// or mailto:, with / for a page of this site, or with # for a heading',
          )
        : isFileName(found)
          ? say(
              '{found} is no address that a link may have; a file that a trial publishes has the address /data/, the id of its trial, / and its name',
              { found: showText(found) },
            )
          : say(
              '{found} is no address that a link may have; write one that begins with https://, http:// or mailto:, with / for a page of this site, or with # for a heading',
              { found: showText(found) },
            );
  report(rule, { file, place, found, message });
}
