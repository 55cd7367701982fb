import { say } from '../model/say.ts';
import type { Trial } from '../model/trial.ts';
import type { DayScale } from './day-scale.ts';
import { element, label } from './svg.ts';

/** The days of the trial's cuts, ISO 8601. */
export function cutsOf({ metadata }: Trial): string[] {
  return [...(metadata.dates?.cuts ?? [])];
}

/**
 * A dashed line down the readings at the day of each cut.
 *
 * @param words height at which each is named "cut"; no name where absent
 */
export function cutLines(trial: Trial, scale: DayScale, top: number, foot: number, words?: number): string[] {
  const cuts = cutsOf(trial);
  return cuts.map((date, index) => {
    const x = scale.at(date);
    const line = element('line', { class: 'cut-day', x1: x, x2: x, y1: top, y2: foot });
    if (words === undefined) return line;
    const name = cuts.length > 1 ? say('cut {cut}', { cut: index + 1 }) : say('cut');
    return line + label(name, { class: 'tick', x, dx: -4, y: words, 'text-anchor': 'end' });
  });
}
