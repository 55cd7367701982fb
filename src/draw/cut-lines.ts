import { say } from '../model/say.ts';
import type { Trial } from '../model/trial.ts';
import type { DayScale } from './day-scale.ts';
import { element, label } from './svg.ts';

/** More days than these are a harvest drawn out, whose single days would hide the readings. */
const mostDays = 8;

/** The days of the trial's cuts and, where containers were cut on days of their own, those; ISO 8601, in order. */
export function cutsOf({ metadata, harvest }: Trial): string[] {
  const named = metadata.dates?.cuts ?? [];
  const own = harvest.flatMap(({ date }) => (date === null ? [] : [date]));
  const days = [...new Set([...named, ...own])].sort();
  return days.length > mostDays ? [...named] : days;
}

/**
 * A dashed line down the readings at the day of each cut that the scale reaches.
 *
 * @param words height at which each is named "cut"; no name where absent
 */
export function cutLines(trial: Trial, scale: DayScale, top: number, foot: number, words?: number): string[] {
  const named: readonly string[] = trial.metadata.dates?.cuts ?? [];
  const within = cutsOf(trial).filter((date) => date >= scale.first && date <= scale.last);
  return within.map((date) => {
    const x = scale.at(date);
    const line = element('line', { class: 'cut-day', x1: x, x2: x, y1: top, y2: foot });
    if (words === undefined) return line;
    const number = named.length > 1 ? named.indexOf(date) + 1 : 0;
    const name = number > 0 ? say('cut {cut}', { cut: number }) : say('cut');
    return line + label(name, { class: 'tick', x, dx: -4, y: words, 'text-anchor': 'end' });
  });
}
