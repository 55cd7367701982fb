import { daysBetween } from '../compute/days-between.ts';
import { formatShortDate } from '../compute/format/format-date.ts';
import { type FluidScale, fluidScale } from './fluid.ts';

/** A scale of days over the width of a fluid drawing. */
export interface DayScale {
  first: string;
  last: string;
  /** Percent of the width. */
  percent(date: string): number;
  at(date: string): string;
  days(date: string): number;
  scale: FluidScale;
}

/** From the earliest of the given days to the latest. Dates are ISO 8601, so that they sort as text. */
export function dayScale(dates: readonly string[], range: readonly [number, number]): DayScale {
  const sorted = [...dates].sort();
  const [first, last] = [sorted[0]!, sorted.at(-1)!];
  const scale = fluidScale([0, Math.max(1, daysBetween(first, last))], range);
  const days = (date: string) => daysBetween(first, date);
  return {
    first,
    last,
    days,
    scale,
    percent: (date) => scale.percent(days(date)),
    at: (date) => scale.at(days(date)),
  };
}

/** The first of each month within the scale, named; every week's start would be too many in a narrow column. */
export function monthStarts(scale: DayScale): { date: string; name: string }[] {
  const starts: { date: string; name: string }[] = [];
  let [year, month] = scale.first.split('-').map(Number) as [number, number];
  for (let count = 0; count < 600; count += 1) {
    month += 1;
    if (month > 12) [year, month] = [year + 1, 1];
    const date = `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-01`;
    if (date > scale.last) break;
    starts.push({ date, name: formatShortDate(date).replace(/^.*\u00A0/, '') });
  }
  const every = Math.ceil(starts.length / 6);
  return starts.filter((_, index) => index % every === 0);
}
