import type { Report, Rule } from '../rule.ts';
import type { Place } from '../../read/place.ts';
import { didYouMean, nearest } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unknown-column',
  severity: 'error',
  acceptable: false,
  title: 'Unknown column',
  meaning:
    'A column that is not known would be passed over in silence. Its heading may be misspelt, or be declared in trial.yaml.',
  example: '"fresh_wieght" is not a column of harvest.csv; did you mean "fresh_weight"?',
};
export default rule;

export function reportUnknownColumn(
  report: Report,
  file: string,
  place: Place,
  heading: string,
  known: readonly string[],
): void {
  const advice =
    nearest(heading, known) === null ? `; known columns: ${known.join(', ')}` : didYouMean(heading, known);
  report(rule, {
    file,
    place,
    found: heading,
    expected: nearest(heading, known),
    message: `${showText(heading)} is not a column of ${file}${advice}`,
  });
}
