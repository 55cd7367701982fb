import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { indexesWhere } from '../indexes-where.ts';
import type { Report, Rule } from '../rule.ts';
import { whereOf } from '../grid.ts';
import { recordPlace } from '../places.ts';

const rule: Rule = {
  rule: 'no-regrowth-at-first-cut',
  severity: 'warning',
  acceptable: true,
  title: 'No regrowth at the first cut',
  meaning:
    'No regrowth means that a plant was cut before and did not come again; at the first cut it cannot.',
  example: 'the status at cut 1 is "no regrowth"; was the plant dead?',
  check,
};
export default rule;

function check({ harvest }: Facts, report: Report): void {
  if (harvest === null) return;
  const { records } = harvest;
  for (const index of indexesWhere(records, ({ status, cut }) => status === 'no regrowth' && cut === 1)) {
    const record = records[index]!;
    const message = say(
      'the status at cut 1 is "no regrowth", but nothing was cut before; was the plant dead, or the cut another?',
    );
    report(rule, {
      file: 'harvest.csv',
      place: recordPlace(harvest, index, 'status'),
      found: record.status,
      message,
      where: whereOf(record),
    });
  }
}
