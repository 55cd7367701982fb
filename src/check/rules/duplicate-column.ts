import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import type { Place } from '../../read/place.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'duplicate-column',
  severity: 'error',
  acceptable: false,
  title: 'The same heading twice',
  meaning: 'Of two columns of one heading only one could count.',
  example: 'the heading "fresh_weight" stands twice; keep one',
};
export default rule;

export function reportDuplicateColumn(
  report: Report,
  file: string,
  place: Place,
  heading: string,
  first: number,
): void {
  const message = say('the heading {heading} stands twice (first as column {number}); keep one', {
    heading: showText(heading),
    number: first + 1,
  });
  report(rule, { file, place, found: heading, message });
}
