import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'sheet-raw-html',
  severity: 'error',
  acceptable: false,
  title: 'HTML in a fact sheet',
  meaning:
    'HTML could hold scripts, styles and pictures from elsewhere. A fact sheet has Markdown and the components of this program only.',
  example: '"<b>" is HTML; write **bold** or *italic* text in Markdown, or a component of the program',
};
export default rule;

const instead: Readonly<Record<string, string>> = {
  b: '**bold** text in Markdown',
  strong: '**bold** text in Markdown',
  i: '*italic* text in Markdown',
  em: '*italic* text in Markdown',
  a: 'a link as [its name](https://example.org/)',
  img: 'a photograph of the trial with the component Photo',
  br: 'a new paragraph after an empty line',
  table: 'a table in Markdown, or the component Treatments',
};

export function reportSheetRawHtml(report: Report, file: string, { place, found }: SheetFault): void {
  const name = found.slice(1, -1);
  const isPlain = Object.hasOwn(instead, name);
  report(rule, {
    file,
    place,
    found,
    message: `${showText(found)} is HTML, which a fact sheet does not take; write ${isPlain ? instead[name] : 'Markdown or a component of the program'}`,
  });
}
