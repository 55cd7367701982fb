import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-too-large',
  severity: 'error',
  acceptable: false,
  title: 'Fact sheet too large to read',
  meaning:
    'A fact sheet is two to four printed pages. A file many times as long, or with quotations and lists deep within one another, is something else, and reading it could take for ever.',
  example: 'the sheet is longer than 30000 characters; a fact sheet is two to four printed pages',
};
export default rule;

const advice: Readonly<Record<string, (found: string, most: string) => string>> = {
  'too large': (count, most) =>
    say('the sheet has {count} characters, more than {most}; a fact sheet is two to four printed pages', {
      count,
      most,
    }),
  'too deep': (_, most) =>
    say(
      'quotations, lists or components stand within one another more than {most} deep; set them one below the other',
      { most },
    ),
  'too wide': (_, most) =>
    say('a row of a table has more than {most} cells, which no page is wide enough for; split the table', {
      most,
    }),
};

export function reportSheetTooLarge(report: Report, file: string, fault: SheetFault): void {
  const { kind, place, detail } = fault;
  const found = kind === 'too large' ? say('{count} characters', { count: fault.found }) : fault.found;
  report(rule, { file, place, found, message: advice[kind]?.(fault.found, detail) ?? kind });
}
