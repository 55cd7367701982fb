import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';
import { cut, showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'sheet-syntax',
  severity: 'error',
  acceptable: false,
  title: 'Fact sheet that cannot be read',
  meaning:
    'A tag that is not closed or a brace without its pair breaks the file, so that nothing behind it can be read with certainty.',
  example: 'this is not MDX: "<" begins a component; to say less than, put a space behind it or write &lt;',
};
export default rule;

/** The parser's words for the commonest faults, in a grower's. */
const words: readonly [RegExp, () => string][] = [
  [
    /to create a comment in MDX/,
    () => say('a remark that is not printed stands in {/* and */}, not in <!-- and -->'),
  ],
  [
    /to create a link in MDX/,
    () => say('an address in < and > is no link; write [its name](https://example.org/)'),
  ],
  [
    /before name, expected a character that can start a name/,
    () => say('"<" begins a component; to say less than, put a space behind it or write &lt;'),
  ],
  [
    /before attribute value/,
    () => say('the value of an attribute stands in double quotes, such as per="pot"'),
  ],
  [
    /before attribute name|in attribute name|after attribute name/,
    () => say('attributes are written as name="value" with a space between them, and end with />'),
  ],
  [
    /Unexpected end of file in expression|Could not parse expression|corresponding closing brace/,
    () => say('a brace is opened and never closed; to print one, write \\{'),
  ],
  [/Unexpected lazy line/, () => say('a component that begins in a quotation or a list must end in it')],
  [/Unexpected closing slash|Unexpected closing tag/, () => say('a tag is closed that was not opened here')],
  [
    /^Expected a closing tag for `<(.+?)>`/,
    () => say('a component is opened and not closed before its paragraph or part ends; end it with />'),
  ],
  [/^Expected the closing tag/, () => say('a component is closed elsewhere than it was opened')],
  [/Unexpected end of file/, () => say('the file ends within a component; end it with />')],
];

/** Reports syntax that the parser stopped at: the first such fault hides what follows it. */
export function reportSheetSyntax(report: Report, file: string, { place, detail }: SheetFault): void {
  const reason = words.find(([pattern]) => pattern.test(detail))?.[1]() ?? cut(detail);
  report(rule, { file, place, found: detail, message: say('this is not MDX: {reason}', { reason }) });
}

/** Reports keys between lines of three hyphens that are not read as such. */
export function reportSheetFrontMatter(
  report: Report,
  file: string,
  { place, found, detail }: SheetFault,
): void {
  const message =
    detail === 'not closed'
      ? say('the keys at the top are not closed; write --- on a line of its own behind them')
      : say('keys such as title stand at the very top; take out what stands before the first ---');
  report(rule, { file, place, found, message });
}

/** Reports the mark of a footnote, which would be printed as it is typed. */
export function reportSheetFootnote(report: Report, file: string, { place, found }: SheetFault): void {
  const message = say(
    '{found} is a footnote, and a fact sheet has none; write its words in brackets where the mark stands, and take the note out',
    { found: showText(found) },
  );
  report(rule, { file, place, found, message });
}
