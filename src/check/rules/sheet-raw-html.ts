import { say } from '../../model/say.ts';
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

/** What to write in place of a tag of HTML. */
function instead(tag: string): string {
  switch (tag) {
    case 'b':
    case 'strong':
      return say('**bold** text in Markdown');
    case 'i':
    case 'em':
      return say('*italic* text in Markdown');
    case 'a':
      return say('a link as [its name](https://example.org/)');
    case 'img':
      return say('a photograph of the trial with the component Photo');
    case 'br':
      return say('a new paragraph after an empty line');
    case 'table':
      return say('a table in Markdown, or the component Treatments');
    default:
      return say('Markdown or a component of the program');
  }
}

export function reportSheetRawHtml(report: Report, file: string, { place, found }: SheetFault): void {
  const message = say('{tag} is HTML, which a fact sheet does not take; write {instead}', {
    tag: showText(found),
    instead: instead(found.slice(1, -1)),
  });
  report(rule, { file, place, found, message });
}
