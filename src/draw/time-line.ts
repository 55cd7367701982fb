import { formatDate, formatShortDate } from '../compute/format/format-date.ts';
import type { Figure } from '../model/figure.ts';
import type { Trial } from '../model/trial.ts';
import { say, sayCount } from '../model/say.ts';
import { dayScale, type DayScale, monthStarts } from './day-scale.ts';
import { drawEventMarks, eventRows } from './event-marks.ts';
import { cutLines } from './cut-lines.ts';
import { readingsPanels } from './readings-panels.ts';
import { drawRows, stackedRows, tallest } from './stacked-rows.ts';
import { drawing, element, label } from './svg.ts';
import { textWidth } from './text-width.ts';
import { timeTable } from './time-table.ts';
import { narrow } from './grid-map.ts';

/** A day of the trial that has a name of its own. */
export interface Milestone {
  date: string;
  what: string;
}

const id = 'time-line';
const range = [7, 84] as const;
const labelHeight = 32;

/** Sown, germinated, transplanted and each cut, in the order of their days. */
export function milestonesOf(trial: Trial): Milestone[] {
  const { sown, germinated, transplanted, cuts = [] } = trial.metadata.dates ?? {};
  const named = [
    { date: sown, what: say('sown') },
    { date: germinated, what: say('germinated') },
    { date: transplanted, what: say('transplanted') },
    ...cuts.map((date, index) => ({
      date,
      what: cuts.length > 1 ? say('cut {cut}', { cut: index + 1 }) : say('cut'),
    })),
  ];
  return named
    .flatMap(({ date, what }) => (date === undefined ? [] : [{ date, what }]))
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

function datesOf(trial: Trial): string[] {
  return [...milestonesOf(trial), ...(trial.metadata.events ?? []), ...trial.readings].map(
    ({ date }) => date,
  );
}

/** Whether more than one day is known: of a single one the time line is a stroke, which says less than its date. */
export function hasSeveralDays(trial: Trial): boolean {
  return new Set(datesOf(trial)).size > 1;
}

/**
 * What happened when, on one line: sowing, planting and cuts above it, numbered events on it with their words
 * below, and each kind of reading in a panel on the same days. Null where no day is known.
 */
export function drawTimeLine(trial: Trial): Figure | null {
  const milestones = milestonesOf(trial);
  const events = [...(trial.metadata.events ?? [])].sort((a, b) =>
    a.date < b.date ? -1 : a.date > b.date ? 1 : 0,
  );
  const dates = datesOf(trial);
  if (dates.length === 0) return null;
  const scale = dayScale(dates, range);
  const above = drawMilestones(milestones, scale);
  const y = above.height;
  const marks = drawEventMarks(events, scale, y);
  const foot = y + marks.height;
  const months = drawMonths(scale, y, foot);
  const panels = readingsPanels(trial, scale, foot + 22);
  const end = foot + 22 + panels.height;
  const cuts = panels.height > 0 ? cutLines(trial, scale, foot + 22, end) : [];
  const rows = eventRows(events);
  const words = drawRows(rows, end + (events.length === 0 ? 0 : 6));
  const title = say('Time line');
  const said = milestones.map(({ date, what }) => say('{what} on {date}', { what, date: formatDate(date) }));
  const rest = [
    events.length === 0 ? '' : sayCount(events.length, '{count} event noted', '{count} events noted'),
    panels.kinds.length === 0 ? '' : say('readings of {kinds}', { kinds: panels.kinds.join(', ') }),
  ].filter((each) => each !== '');
  const sentence = [...said, ...rest].join('; ');
  const description = [`${sentence.replace(/^./, (letter) => letter.toUpperCase())}.`];
  // What no printed page holds has the words of its events in a drawing of their own, which may begin a page.
  const apart = words.height > tallest;
  const line = drawing(
    { id, title, description, kind: id },
    { height: apart || events.length === 0 ? end : words.height },
    months,
    element('line', { class: 'day', x1: scale.at(scale.first), x2: scale.at(scale.last), y1: y, y2: y }),
    above.svg,
    marks.svg,
    ...cuts,
    panels.svg,
    ...(apart ? [] : words.drawn),
  );
  const listed = {
    id: `${id}-events`,
    title: say('Time line: the events noted'),
    description: [say('It goes on from the drawing above.')],
    kind: id,
  };
  return {
    id,
    title,
    description,
    svg: apart ? line + stackedRows(listed, rows, { scale: null, unit: '' }) : line,
    table: timeTable(trial, milestones, events),
  };
}

/**
 * Labels above the line, each to the right of its day where there is room. From the last day back, each stands
 * above every later label that it would meet in a phone's column, so that no leader crosses a label.
 */
function drawMilestones(milestones: readonly Milestone[], scale: DayScale): { svg: string; height: number } {
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

function drawMonths(scale: DayScale, y: number, foot: number): string {
  return monthStarts(scale)
    .map(
      ({ date, name }) =>
        element('line', { class: 'baseline', x1: scale.at(date), x2: scale.at(date), y1: y, y2: foot }) +
        label(name, { class: 'tick', x: scale.at(date), y: foot + 13, 'text-anchor': 'middle' }),
    )
    .join('');
}
