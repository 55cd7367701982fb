import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { daysBetween } from '../days.ts';

const rule: Rule = {
  rule: 'event-outside-the-trial',
  severity: 'warning',
  acceptable: true,
  title: 'Event far from the trial',
  meaning:
    'An event or a photograph is dated half a year or more before the trial began or after its last cut. Mostly a slip in a year.',
  example: 'the date of events[1] is 2024-10-02, but the trial ran from 2025-08-25 to 2025-10-20',
  check,
};
export default rule;

const halfAYear = 183;

function check({ metadata, today }: Facts, report: Report): void {
  const { dates, events = [], photos = [], releases = [], status } = metadata.draft;
  const first = dates?.sown ?? dates?.germinated ?? dates?.transplanted;
  const last = dates?.cuts?.at(-1);
  // Dates out of their order are reported as such; no event can be held against them.
  if (first !== undefined && last !== undefined && first > last) return;
  // What a release holds was noted before it; one before the last cut is dated wrongly itself.
  const released =
    status === 'finished'
      ? releases
          .map(({ date }) => date)
          .sort()
          .at(-1)
      : undefined;
  const isReleased = released !== undefined && last !== undefined && released >= last;
  for (const [key, items] of [
    ['events', events],
    ['photos', photos],
  ] as const) {
    for (const [index, { date }] of items.entries()) {
      if (date === undefined || date > today) continue;
      const isEarly = first !== undefined && daysBetween(date, first) > halfAYear;
      const isLate = last !== undefined && daysBetween(last, date) > halfAYear;
      const isAfterRelease = isReleased && date > released;
      if (!isEarly && !isLate && !isAfterRelease) continue;
      const what = `${key}[${String(index + 1)}]`;
      const message = isAfterRelease
        ? say(
            'the date of {what} is {date}, later than the newest release of {released}, which holds it; is it right?',
            { what, date, released },
          )
        : messageOf(what, date, first, last);
      report(rule, { file: 'trial.yaml', place: metadata.place([key, index, 'date']), found: date, message });
    }
  }
}

/** One of the two ends is known, or nothing could be held against them. */
function messageOf(what: string, date: string, first: string | undefined, last: string | undefined): string {
  const values = { what, date, first: first ?? '', last: last ?? '' };
  if (first === undefined)
    return say(
      'the date of {what} is {date}, but the trial ran from its beginning to {last}; is the year right?',
      values,
    );
  return last === undefined
    ? say('the date of {what} is {date}, but the trial ran from {first} to now; is the year right?', values)
    : say(
        'the date of {what} is {date}, but the trial ran from {first} to {last}; is the year right?',
        values,
      );
}
