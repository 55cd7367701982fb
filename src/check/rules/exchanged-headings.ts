import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'exchanged-headings',
  severity: 'error',
  acceptable: false,
  title: 'Two headings exchanged',
  meaning:
    'Row after row is at fault as the headings stand, and not one would be if two of them changed places.',
  example:
    'row after row is at fault, and none would be if the headings "row" and "fresh_weight" changed places',
};
export default rule;

export function reportExchangedHeadings(
  report: Report,
  file: string,
  line: number,
  [one, other]: readonly [string, string],
): void {
  const message = say(
    'row after row is at fault, and none would be if the headings {one} and {other} changed places; exchange the two',
    { one: showText(one), other: showText(other) },
  );
  report(rule, {
    file,
    place: { line, column: 1 },
    found: `${one}, ${other}`,
    expected: `${other}, ${one}`,
    message,
  });
}
