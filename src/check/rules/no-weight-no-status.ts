import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';

const rule: Rule = {
  rule: 'no-weight-no-status',
  severity: 'error',
  acceptable: false,
  title: 'Neither weight nor status',
  meaning:
    'An empty weight could be a dead plant, a forgotten one or one never planted, and each counts differently.',
  example: 'fresh_weight and status are both empty; write the weight, or what became of the plant',
};
export default rule;

export function reportNoWeightNoStatus(
  report: Report,
  table: Table,
  row: CsvRow,
  name: string,
  status: string,
  where: string,
): void {
  const message = say(
    status === 'weighed'
      ? 'the status is "weighed", but {column} is empty; write the weight, or the status: not weighed, dead, no regrowth, culled or not planted'
      : '{column} and status are both empty; write the weight, or the status: not weighed, dead, no regrowth, culled or not planted',
    { column: table.heading(name) },
  );
  report(rule, {
    file: table.file,
    place: table.place(row, name),
    found: '',
    expected: say('a weight or a status'),
    message,
    where,
  });
}
