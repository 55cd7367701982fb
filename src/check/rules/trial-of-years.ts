import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { daysBetween } from '../days.ts';

const rule: Rule = {
  rule: 'trial-of-years',
  severity: 'warning',
  acceptable: true,
  title: 'Trial of more than two years',
  meaning:
    'Between the first date and the last cut lie more than two years, or between sowing and germination more than half a year. Mostly a slip in a year.',
  example: 'from dates.sown on 1925-08-25 to the last cut on 2025-10-20 are more than two years',
  check,
};
export default rule;

const twoYears = 731;
/** Days from sowing after which hardly any seed comes up, in a trial of one season; common practice, no source. */
const halfAYear = 183;

function check({ metadata, today }: Facts, report: Report): void {
  const { sown, germinated, transplanted, cuts = [] } = metadata.draft.dates ?? {};
  const last = cuts.at(-1);
  if (last === undefined || last > today) return;
  for (const [name, date] of Object.entries({ sown, germinated, transplanted })) {
    if (date === undefined || daysBetween(date, last) <= twoYears) continue;
    const message = say(
      'from dates.{name} on {date} to the last cut on {last} are more than two years; is the year right?',
      { name, date, last },
    );
    report(rule, { file: 'trial.yaml', place: metadata.place(['dates', name]), found: date, message });
    return;
  }
  if (sown === undefined || germinated === undefined) return;
  const days = daysBetween(sown, germinated);
  if (days <= halfAYear) return;
  const message = say(
    'from dates.sown on {sown} to dates.germinated on {germinated} are {days} days; is the year right?',
    {
      sown,
      germinated,
      days,
    },
  );
  report(rule, { file: 'trial.yaml', place: metadata.place(['dates', 'sown']), found: sown, message });
}
