import { formatShortDate } from '../compute/format/format-date.ts';
import type { DayScale } from './day-scale.ts';
import { dodge } from './dodge.ts';
import { narrow } from './grid-map.ts';
import type { Row } from './stacked-rows.ts';
import { element, label } from './svg.ts';
import { wrapText } from './wrap-text.ts';

/** An event of the notebook. */
export interface Event {
  date: string;
  where?: string;
  what: string;
}

interface Piece {
  svg: string;
  height: number;
}

const lineHeight = 16;
const apart = 19;

/** Numbered marks below the time line, lowered where two would touch in a phone's column. */
export function drawEventMarks(events: readonly Event[], scale: DayScale, y: number): Piece {
  const places = events.map(({ date }) => (scale.percent(date) / 100) * narrow);
  const levels = dodge(places, apart);
  const drawn = events.map(({ date }, index) => {
    const x = scale.at(date);
    const centre = y + 18 + levels[index]! * apart;
    return {
      leader: element('line', { class: 'leader', x1: x, x2: x, y1: y, y2: centre }),
      mark: eventMark(x, centre, index + 1),
    };
  });
  const svg = [...drawn.map(({ leader }) => leader), ...drawn.map(({ mark }) => mark)].join('');
  return { svg, height: events.length === 0 ? 10 : 32 + Math.max(...levels) * apart };
}

function eventMark(x: string, y: number, number: number): string {
  return element(
    'g',
    { class: 'event' },
    element('circle', { cx: x, cy: y, r: 8.5 }),
    label(String(number), { x, y: y + 4, 'text-anchor': 'middle' }),
  );
}

/** The events' words, numbered, broken to a phone's column: a row each. */
export function eventRows(events: readonly Event[]): Row[] {
  return events.map(({ date, where, what }, index) => {
    const place = where === undefined ? '' : ` (${where})`;
    const lines = wrapText(`${formatShortDate(date)}${place}: ${what}`, narrow - 32, 13);
    return (top) => {
      const words = lines.map((text, line) => label(text, { x: 26, y: top + 16 + line * lineHeight }));
      const mark = eventMark('10', top + 12, index + 1);
      return { svg: mark + words.join(''), height: lines.length * lineHeight + 7 };
    };
  });
}
