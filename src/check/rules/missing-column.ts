import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'missing-column',
  severity: 'error',
  acceptable: false,
  title: 'Missing column',
  meaning: 'Without this column the rows cannot be placed or read.',
  example: 'the column "row" is missing; the headings are container, column, fresh_weight',
};
export default rule;

export function reportMissingColumn(
  report: Report,
  file: string,
  heading: string,
  headings: readonly string[],
  hint: string | null = null,
): void {
  const list = headings.map((one) => showText(one)).join(', ');
  report(rule, {
    file,
    place: { line: 1, column: 1 },
    expected: heading,
    message: say('the column {column} is missing; the headings are {headings}', {
      column: showText(heading),
      headings: list,
    }),
    hint,
  });
}
