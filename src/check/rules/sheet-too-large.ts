import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-too-large',
  severity: 'error',
  acceptable: false,
  title: 'Fact sheet too large to read',
  meaning:
    'A fact sheet is two to four printed pages. A file many times as long, or with quotations and lists deep within one another, is something else, and reading it could take for ever.',
  example: 'the sheet is longer than 50000 characters; a fact sheet is two to four printed pages',
};
export default rule;

export function reportSheetTooLarge(
  report: Report,
  file: string,
  { kind, place, found, detail }: SheetFault,
): void {
  const message =
    kind === 'too large'
      ? `the sheet has ${found}, more than ${detail}; a fact sheet is two to four printed pages`
      : `quotations, lists or components stand within one another more than ${detail} deep; set them one below the other`;
  report(rule, { file, place, found, message });
}
