import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import type { Place } from '../../read/place.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'blank-heading',
  severity: 'error',
  acceptable: false,
  title: 'Column without a heading',
  meaning:
    'What stands beneath a blank heading cannot be told. Spreadsheets leave such columns when cells beside the table were once used.',
  example: 'column 6 has no heading; write one, or delete the column',
};
export default rule;

/** @param instead a needed column that is missing, and may be this one */
export function reportBlankHeading(
  report: Report,
  file: string,
  place: Place,
  column: number,
  instead: string | null,
): void {
  const message =
    instead === null
      ? say('column {number} has no heading; write one, or delete the column', { number: column + 1 })
      : say('column {number} has no heading, and the column "{name}" is missing; is it this one?', {
          number: column + 1,
          name: instead,
        });
  report(rule, { file, place, found: showText(''), message });
}
