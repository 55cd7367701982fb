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
  found: {
    heading: string;
    /** Index of the column that has it first. */
    first: number;
    /** A needed column that is missing, and may be one of the two. */
    instead: string | null;
  },
): void {
  const { heading, first, instead } = found;
  const shown = { heading: showText(heading), number: first + 1 };
  const message =
    instead === null
      ? say('the heading {heading} stands twice (first as column {number}); keep one', shown)
      : say(
          'the heading {heading} stands twice (first as column {number}), and the column "{name}" is missing; is one of the two that?',
          { ...shown, name: instead },
        );
  report(rule, { file, place, found: heading, message });
}
