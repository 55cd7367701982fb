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
    'A row bears a date more than a week from that of the other plants of its container at the same cut, or all of them bear that of another cut or of another year. Perhaps the cut number or the date is wrong.',
  example: 'date is 2025-10-02, but the others of T1 at cut 1 were cut on 2025-10-20',
  check,
};
export default rule;

/** Days within which one cut of a container is brought in. */
const aWeek = 7;
/** Days within which the containers of one trial come to the same cut, sown at different times; common practice, no source. */
const mostApart = 250;

function check(facts: Facts, report: Report): void {
  const { harvest, metadata } = facts;
  if (!harvest?.table.index.has('date')) return;
  const cuts: readonly string[] = metadata.draft.dates?.cuts ?? [];
  // Cuts out of their order are reported as such; no row can be held against them.
  if (cuts.some((date, index) => index > 0 && date <= cuts[index - 1]!)) return;
  const differing = indexesWhere(harvest.records, ({ date, cut }) => date !== cuts[cut - 1]);
  const usual = differing.length === 0 ? new Map<string, string>() : usualDates(harvest.records);
  checkUsual(facts, harvest, usual, report);
  checkNobodys(facts, harvest, report);
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

/** Told once for a container at a cut: all of its rows bear the date of another cut, or one of another year. */
function checkUsual(
  { metadata }: Facts,
  harvest: NonNullable<Facts['harvest']>,
  usual: ReadonlyMap<string, string>,
  report: Report,
): void {
  const cuts: readonly string[] = metadata.draft.dates?.cuts ?? [];
  const said = new Set<string>();
  for (const index of indexesWhere(harvest.records, ({ date, cut }) => date !== cuts[cut - 1])) {
    const { container, cut, date } = harvest.records[index]!;
    const key = `${container} ${String(cut)}`;
    const planned = cuts[cut - 1];
    if (date === null || planned === undefined || said.has(key) || usual.get(key) !== date) continue;
    const other = cuts.indexOf(date) + 1;
    const isFar = Math.abs(daysBetween(planned, date)) > mostApart;
    if ((other === 0 && !isFar) || isOutsideTrial(metadata, date)) continue;
    said.add(key);
    const values = { container, cut, date, planned, other };
    const message =
      other > 0
        ? say(
            'the rows of {container} at cut {cut} bear {date}, the date of cut {other} in trial.yaml; check the date and the cut',
            values,
          )
        : say(
            'the rows of {container} at cut {cut} bear {date}, but dates.cuts in trial.yaml has {planned} for it; is the year right?',
            values,
          );
    const place = recordPlace(harvest, index, 'date');
    report(rule, { file: 'harvest.csv', place, found: date, expected: planned, message, where: container });
  }
}

/** Told once for a cut: every row has a date, and not one of them a date near that of dates.cuts. */
function checkNobodys({ metadata }: Facts, harvest: NonNullable<Facts['harvest']>, report: Report): void {
  for (const [number, planned] of (metadata.draft.dates?.cuts ?? []).entries()) {
    const rows = [...harvest.records.keys()].filter((index) => harvest.records[index]!.cut === number + 1);
    const days = rows.map((index) => harvest.records[index]!.date);
    const isElsewhere = (date: string | null): boolean =>
      date !== null &&
      Math.abs(daysBetween(planned, date)) > aWeek &&
      Math.abs(daysBetween(planned, date)) <= mostApart &&
      !isOutsideTrial(metadata, date) &&
      metadata.draft.dates?.cuts?.includes(date) !== true;
    if (rows.length < 2 || !days.every(isElsewhere)) continue;
    const latest = days.toSorted().at(-1)!;
    const message = say(
      'no row of cut {cut} bears {planned}, its date in dates.cuts of trial.yaml; the latest has {date}. Which of the two is right?',
      { cut: number + 1, planned, date: latest },
    );
    const place = recordPlace(harvest, rows[days.indexOf(latest)]!, 'date');
    report(rule, { file: 'harvest.csv', place, found: latest, expected: planned, message });
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
