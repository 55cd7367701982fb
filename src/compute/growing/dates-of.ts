import { say } from '../../model/say.ts';
import type { Trial } from '../../model/trial.ts';
import { daysBetween } from '../days-between.ts';
import { formatDate } from '../format/format-date.ts';

/** The trial's dates in their order, each with the days since the first. */
export function datesOf(trial: Trial): { name: string; text: string }[] {
  const { sown, germinated, transplanted, cuts = [] } = trial.metadata.dates ?? {};
  const named: [string, string | undefined][] = [
    [say('Sown'), sown],
    [say('Germinated'), germinated],
    [say('Transplanted'), transplanted],
    ...cuts.map((date, index): [string, string] => [
      cuts.length > 1 ? say('Cut {cut}', { cut: index + 1 }) : say('Cut'),
      date,
    ]),
  ];
  const known = named.flatMap(([name, date]) => (date === undefined ? [] : [{ name, date }]));
  const first = known[0];
  return known.map(({ name, date }, index) => ({
    name,
    text:
      formatDate(date) +
      (index === 0 ? '' : `, ${say('day {day}', { day: daysBetween(first!.date, date) })}`),
  }));
}
