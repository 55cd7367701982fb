import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { indexesWhere } from '../indexes-where.ts';
import type { Report, Rule } from '../rule.ts';
import { daysBetween } from '../days.ts';
import { whereOf } from '../grid.ts';
import { readingPlace, recordPlace } from '../places.ts';

const rule: Rule = {
  rule: 'date-outside-the-trial',
  severity: 'error',
  acceptable: true,
  title: 'Date outside the trial',
  meaning:
    'A row of the harvest lies between transplanting and two weeks after the last cut; a reading within a month of the trial.',
  example: 'date is 2024-10-20, but the trial ran from 2025-08-25 to 2025-10-20',
  check,
};
export default rule;

/** Days after the last cut by which its harvest is surely in. */
const afterLastCut = 14;
/** Days before sowing and after the last cut in which readings may still be taken. */
const aroundTheTrial = 31;

/** Days before all else that is dated in a trial without a day of sowing. */
const beforeAll = 183;

/** The first day that an event or a cut of a trial without a day of sowing bears. */
function earliestOf({ metadata }: Pick<Facts, 'metadata'>): string | undefined {
  const { events = [], dates } = metadata.draft;
  if (metadata.lost.has('events') || metadata.lost.has('dates')) return undefined;
  return [...events.map(({ date }) => date), ...(dates?.cuts ?? [])].sort()[0];
}

function spanOf({ draft }: Facts['metadata']): [first: string | undefined, last: string | undefined] {
  const { sown, germinated, transplanted, cuts = [] } = draft.dates ?? {};
  const [first, last] = [sown ?? germinated ?? transplanted, cuts.at(-1)];
  // Dates out of their order are reported as such; no row can be held against them.
  return first !== undefined && last !== undefined && first > last ? [undefined, undefined] : [first, last];
}

/** True for a day more than `before` days before the trial or `after` days after its last cut. */
export function isOutsideTrial(
  metadata: Facts['metadata'],
  date: string,
  before = 0,
  after = afterLastCut,
): boolean {
  const [first, last] = spanOf(metadata);
  const isEarly = first !== undefined && daysBetween(first, date) < -before;
  return isEarly || (last !== undefined && daysBetween(last, date) > after);
}

/** True for a day on which no reading of the trial was taken. */
export function isReadingOutside(metadata: Facts['metadata'], date: string): boolean {
  return isOutsideTrial(metadata, date, aroundTheTrial, aroundTheTrial);
}

function check({ metadata, harvest, readings, today }: Facts, report: Report): void {
  const { cuts = [] } = metadata.draft.dates ?? {};
  const [first, last] = spanOf(metadata);
  if (last === undefined) return;
  const earliest = first === undefined ? earliestOf({ metadata }) : undefined;
  const outside = (date: string): string =>
    first === undefined
      ? date < last && earliest !== undefined
        ? say('date is {date}, but nothing else of the trial is dated before {first}; is the year right?', {
            date,
            first: earliest,
          })
        : say('date is {date}, but the trial ran from its beginning to {last}; correct the date', {
            date,
            last,
          })
      : say('date is {date}, but the trial ran from {first} to {last}; correct the date', {
          date,
          first,
          last,
        });
  const isOutside = (date: string, before: number, after: number): boolean =>
    date <= today && isOutsideTrial(metadata, date, before, after);
  const file = 'harvest.csv';
  if (harvest?.table.index.has('date')) {
    for (const index of indexesWhere(harvest.records, ({ date, cut }) => date !== cuts[cut - 1])) {
      const record = harvest.records[index]!;
      const { date } = record;
      if (date === null || !isOutside(date, 0, afterLastCut)) continue;
      const message = outside(date);
      report(rule, {
        file,
        place: recordPlace(harvest, index, 'date'),
        found: date,
        message,
        where: whereOf(record),
      });
    }
  }
  for (const [index, { date, container }] of (readings?.rows ?? []).entries()) {
    const isBeforeAll = earliest !== undefined && daysBetween(date, earliest) > beforeAll;
    if (!isBeforeAll && !isOutside(date, aroundTheTrial, aroundTheTrial)) continue;
    const place = readingPlace(readings!, index, 'date');
    report(rule, { file: 'readings.csv', place, found: date, message: outside(date), where: container });
  }
}
