import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import type { Status } from '../../model/trial.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'weight-beside-status',
  severity: 'error',
  acceptable: false,
  title: 'Weight beside a status without one',
  meaning:
    'A plant that was dead, culled, not weighed or not there has no weight. One of the two cells is wrong.',
  example: 'the status is "dead", but fresh_weight is "112"; empty one of the two',
};
export default rule;

export function reportWeightBesideStatus(
  report: Report,
  table: Table,
  row: CsvRow,
  cell: { name: string; text: string; status: Status; where: string },
): void {
  const { name, text, status, where } = cell;
  const heading = table.heading(name);
  const shown = { status: showText(status), heading, weight: showText(text) };
  report(rule, {
    file: table.file,
    place: table.place(row, name),
    found: text,
    expected: say('an empty cell'),
    message: /^0+([.,]0+)?$/.test(text)
      ? say('the status is {status}, but {heading} is {weight}; leave {heading} empty', shown)
      : say('the status is {status}, but {heading} is {weight}; empty one of the two', shown),
    where,
  });
}
