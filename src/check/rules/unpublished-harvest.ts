import { say } from '../../model/say.ts';
import { daysBetween } from '../days.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'unpublished-harvest',
  severity: 'warning',
  acceptable: true,
  title: 'Harvest that is not published',
  meaning:
    'A planned or growing trial has a page and no dataset. Once weights are in, or the last cut is long past, the status was probably left behind.',
  example:
    'harvest.csv has values, but nothing is published while status is planned; write status: finished, or growing while cuts are still to come',
  check,
};
export default rule;

/** From so many days after the last cut on, a trial is hardly growing. */
const longAfter = 60;

function check({ metadata, harvest, today }: Facts, report: Report): void {
  const { status, dates } = metadata.draft;
  if (status !== 'planned' && status !== 'growing') return;
  const measured = (harvest?.records ?? []).filter(({ values }) =>
    Object.values(values).some((value) => value !== null),
  );
  const place = metadata.place(['status']);
  const fault = { file: 'trial.yaml', place, found: status, expected: 'finished' };
  if (status === 'planned') {
    if (measured.length === 0) return;
    const message = say(
      'harvest.csv has values, but nothing is published while status is planned; write status: finished, or growing while cuts are still to come',
    );
    report(rule, { ...fault, message });
    return;
  }
  const cuts = dates?.cuts ?? [];
  // Which cut was the last is not known of cuts out of order.
  if (cuts.some((day, index) => index > 0 && day <= cuts[index - 1]!)) return;
  const days = [...cuts, ...measured.map(({ date }) => date)].filter((day) => day !== null);
  const last = days.toSorted().at(-1);
  if (last === undefined || daysBetween(last, today) < longAfter) return;
  const message = say(
    'the last cut was on {date}, {days} days ago, but nothing is published while status is growing; write status: finished',
    { date: last, days: daysBetween(last, today) },
  );
  report(rule, { ...fault, message });
}
