import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'column-moved',
  severity: 'error',
  acceptable: false,
  title: 'Column a row too low or too high',
  meaning:
    'A cell put in or taken out moves those beneath it, so that every value of the column stands beside another plant. Faults of the rows vanish when the column is moved back.',
  example:
    'the column "fresh_weight" stands a row too low: this row has none, and moved up by one row its cells fit',
};
export default rule;

export function reportColumnMoved(
  report: Report,
  file: string,
  { name, line, isLow }: { name: string; line: number; isLow: boolean },
): void {
  const message = say(
    isLow
      ? 'the column {name} seems to stand a row too low: this row has none, and moved up by one row its cells fit the others; move them back'
      : 'the column {name} seems to stand a row too high: this row has none, and moved down by one row its cells fit the others; move them back',
    { name: showText(name) },
  );
  report(rule, { file, place: { line, column: 1 }, found: name, message });
}
