import { formatShortDate } from '../compute/format/format-date.ts';
import type { DayScale } from './day-scale.ts';
import { narrow } from './grid-map.ts';
import { element, label } from './svg.ts';
import { textWidth } from './text-width.ts';

/** A day of the trial that has a name of its own. */
export interface Milestone {
  date: string;
  what: string;
}

const labelHeight = 32;

/**
 * Labels above the line, each to the right of its day where there is room. From the last day back, each stands
 * above every later label that it would meet in a phone's column, so that no leader crosses a label.
 */
export function drawMilestones(
  milestones: readonly Milestone[],
  scale: DayScale,
): { svg: string; height: number } {
  const later: { x: number; from: number; level: number }[] = [];
  const placed = milestones.toReversed().map(({ date, what }) => {
    const x = (scale.percent(date) / 100) * narrow;
    const width = Math.max(textWidth(what, 13, true), textWidth(formatShortDate(date), 12)) + 8;
    const anchor = x + width > narrow ? 'end' : 'start';
    const [from, to] = anchor === 'end' ? [x - width, x] : [x, x + width];
    const met = later.filter((other) => other.from < to || other.x <= to).map(({ level }) => level);
    const level = Math.max(-1, ...met) + 1;
    later.push({ x, from, level });
    return { date, what, level, anchor };
  });
  const height = (Math.max(-1, ...later.map(({ level }) => level)) + 1) * labelHeight + 16;
  const svg = placed.map(({ date, what, level, anchor }) => {
    const x = scale.at(date);
    const base = height - 14 - level * labelHeight;
    const words = { x, dx: anchor === 'end' ? -4 : 4, 'text-anchor': anchor };
    return element(
      'g',
      { class: 'milestone' },
      element('line', { class: 'leader', x1: x, x2: x, y1: base - 24, y2: height + 6 }),
      label(what, { class: 'strong', ...words, y: base - 15 }),
      label(formatShortDate(date), { class: 'tick', ...words, y: base - 2 }),
    );
  });
  return { svg: svg.join(''), height };
}
