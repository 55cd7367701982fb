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

export function reportBlankHeading(report: Report, file: string, place: Place, column: number): void {
  const message = say('column {number} has no heading; write one, or delete the column', {
    number: column + 1,
  });
  report(rule, { file, place, found: showText(''), message });
}
