import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';

const rule: Rule = {
  rule: 'zero-without-status',
  severity: 'error',
  acceptable: true,
  title: 'Weight of zero',
  meaning:
    'A plant that was weighed weighs something. A zero most often stands for a dead plant or one not weighed, and would drag the mean down.',
  example: 'fresh_weight is 0; leave it empty and write the status',
};
export default rule;

export function reportZeroWithoutStatus(
  report: Report,
  table: Table,
  row: CsvRow,
  name: string,
  text: string,
  where: string,
): void {
  const heading = table.heading(name);
  report(rule, {
    file: table.file,
    place: table.place(row, name),
    found: text,
    expected: say('an empty cell and a status'),
    message: say(
      '{heading} is {weight} without a status; leave it empty and write dead, no regrowth, culled or not weighed (or status weighed where the scale did show 0)',
      { heading, weight: text },
    ),
    where,
  });
}
