import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import type { Place } from '../../read/place.ts';
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
  found: {
    heading: string;
    /** The column that it is probably a slip of. */
    meant: string | null;
    /** A needed column that is missing, while this one cannot be placed. */
    instead: string | null;
    known: readonly string[];
  },
): void {
  const { heading, meant, instead, known } = found;
  const shown = { heading: showText(heading), file };
  report(rule, {
    file,
    place,
    found: heading,
    expected: meant ?? instead,
    message:
      meant !== null
        ? say('{heading} is not a column of {file}; did you mean "{name}"?', { ...shown, name: meant })
        : instead !== null
          ? say('{heading} is not a column of {file}, and the column "{name}" is missing; is it this one?', {
              ...shown,
              name: instead,
            })
          : say('{heading} is not a column of {file}; known columns: {names}', {
              ...shown,
              names: known.join(', '),
            }),
  });
}
