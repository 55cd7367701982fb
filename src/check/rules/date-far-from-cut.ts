import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { indexesWhere } from '../indexes-where.ts';
import type { Report, Rule } from '../rule.ts';
import { daysBetween } from '../days.ts';
import { isOutsideTrial } from './date-outside-the-trial.ts';
import { whereOf } from '../grid.ts';
import { recordPlace } from '../places.ts';

const rule: Rule = {
  rule: 'date-far-from-cut',
  severity: 'warning',
  acceptable: true,
  title: 'Date far from its fellows',
  meaning:
    'A row bears a date more than a week from that of the other plants of its container at the same cut. Perhaps the cut number or the date is wrong.',
  example: 'date is 2025-10-02, but the others of T1 at cut 1 were cut on 2025-10-20',
  check,
};
export default rule;

/** Days within which one cut of a container is brought in. */
const aWeek = 7;

function check({ harvest, metadata }: Facts, report: Report): void {
  if (!harvest?.table.index.has('date')) return;
  const cuts: readonly string[] = metadata.draft.dates?.cuts ?? [];
  const differing = indexesWhere(harvest.records, ({ date, cut }) => date !== cuts[cut - 1]);
  const usual = differing.length === 0 ? new Map<string, string>() : usualDates(harvest.records);
  for (const index of indexesWhere(harvest.records, () => usual.size > 0)) {
    const record = harvest.records[index]!;
    const { date, cut, container } = record;
    const day = usual.get(`${container} ${String(cut)}`);
    if (date === null || day === undefined || date === day || Math.abs(daysBetween(day, date)) <= aWeek)
      continue;
    // Outside the trial altogether it is an error of its own.
    if (isOutsideTrial(metadata, date)) continue;
    const message = say(
      'date is {date}, but the others of {container} at cut {cut} were cut on {usual}; check the date and the cut',
      { date, container, cut, usual: day },
    );
    const place = recordPlace(harvest, index, 'date');
    report(rule, { file: 'harvest.csv', place, found: date, expected: day, message, where: whereOf(record) });
  }
}

/** The date that more than half of a container's rows of a cut bear. */
function usualDates(records: NonNullable<Facts['harvest']>['records']): Map<string, string> {
  const counts = new Map<string, Map<string, number>>();
  for (const { container, cut, date } of records) {
    if (date === null) continue;
    const key = `${container} ${String(cut)}`;
    const dates = counts.get(key) ?? new Map<string, number>();
    counts.set(key, dates.set(date, (dates.get(date) ?? 0) + 1));
  }
  const usual = new Map<string, string>();
  for (const [key, dates] of counts) {
    const total = [...dates.values()].reduce((sum, count) => sum + count, 0);
    const most = [...dates].find(([, count]) => count > total / 2);
    if (most !== undefined) usual.set(key, most[0]);
  }
  return usual;
}
