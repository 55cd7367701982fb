import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'no-headings',
  severity: 'error',
  acceptable: false,
  title: 'No headings',
  meaning:
    'The first line of a CSV file names its columns. Here it names none of those that are needed: a title stands above them, or they were cut off.',
  example: 'line 1 ("Weights of the harvest") has none of the headings; delete the lines above the headings',
};
export default rule;

/** Reports a first line that holds no heading; `headingsLine` is where they stand after all, or null. */
export function reportNoHeadings(
  report: Report,
  file: string,
  line: number,
  first: readonly string[],
  needed: readonly string[],
  headingsLine: number | null,
): void {
  const found = first.join(',');
  const text = showText(found);
  const message =
    headingsLine === null
      ? say('line {line} ({text}) has none of the headings; write them above the rows: {headings}', {
          line,
          text,
          headings: needed.join(','),
        })
      : say(
          'line {line} ({text}) has none of the headings; they stand in line {at}: delete the lines above',
          {
            line,
            text,
            at: headingsLine,
          },
        );
  report(rule, {
    file,
    place: { line, column: 1 },
    found,
    expected: needed.join(','),
    message,
  });
}
