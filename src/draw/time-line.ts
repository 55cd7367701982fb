import { formatDate } from '../compute/format/format-date.ts';
import type { Figure } from '../model/figure.ts';
import type { Trial } from '../model/trial.ts';
import { say, sayCount } from '../model/say.ts';
import { dayScale, type DayScale, monthStarts } from './day-scale.ts';
import { drawEventMarks, type Event, eventRows } from './event-marks.ts';
import { cutLines } from './cut-lines.ts';
import { drawMilestones, type Milestone } from './milestone-labels.ts';
import { readingsPanels, readKinds } from './readings-panels.ts';
import { drawRows, goingOn, inParts, type PartFoot, type Row, stackedRows, tallest } from './stacked-rows.ts';
import { type About, drawing, element, label } from './svg.ts';
import { timeTable } from './time-table.ts';

const id = 'time-line';
const range = [7, 84] as const;
/** The room that the names of the months take below the line, in px. */
const monthsHeight = 22;

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
 * below, and each kind of reading in a panel on the same days. What no printed page holds is in drawings of
 * their own, which may begin a page. Null where no day is known.
 */
export function drawTimeLine(trial: Trial): Figure | null {
  const milestones = milestonesOf(trial);
  const events = [...(trial.metadata.events ?? [])].sort((a, b) =>
    a.date < b.date ? -1 : a.date > b.date ? 1 : 0,
  );
  const dates = datesOf(trial);
  if (dates.length === 0) return null;
  const scale = dayScale(dates, range);
  const title = say('Time line');
  const description = describe(trial, milestones, events.length);
  const svg = drawParts(trial, scale, {
    line: drawLine(milestones, events, scale),
    panels: readingsPanels(trial, scale),
    words: eventRows(events),
    about: { id, title, description, kind: id },
  });
  return { id, title, description, svg, table: timeTable(trial, milestones, events) };
}

function describe(trial: Trial, milestones: readonly Milestone[], events: number): string[] {
  const said = milestones.map(({ date, what }) => say('{what} on {date}', { what, date: formatDate(date) }));
  const kinds = readKinds(trial);
  const rest = [
    events === 0 ? '' : sayCount(events, '{count} event noted', '{count} events noted'),
    kinds.length === 0 ? '' : say('readings of {kinds}', { kinds: kinds.join(', ') }),
  ].filter((each) => each !== '');
  const sentence = [...said, ...rest].join('; ');
  return [`${sentence.replace(/^./, (letter) => letter.toUpperCase())}.`];
}

interface Parts {
  line: { svg: string; height: number };
  panels: readonly Row[];
  words: readonly Row[];
  about: About;
}

/** All in one drawing, or with the events' words apart, or with the panels apart, as a printed page holds them. */
function drawParts(trial: Trial, scale: DayScale, { line, panels, words, about }: Parts): string {
  const below = drawRows(panels, line.height);
  const cuts = panels.length > 0 ? cutLines(trial, scale, line.height, below.height) : [];
  const first = (rows: ReturnType<typeof drawRows> | null, ...inside: readonly string[]) =>
    drawing(about, { height: rows?.height ?? line.height }, line.svg, ...inside, ...(rows?.drawn ?? []));
  const listed = () =>
    stackedRows(furtherDrawing('events', say('Time line: the events noted')), words, {
      scale: null,
      unit: '',
    });
  const gap = words.length === 0 ? 0 : 6;
  const whole = drawRows(words, below.height + gap);
  if (whole.height <= tallest) return first(whole, ...cuts, ...below.drawn);
  if (below.height <= tallest) return first(below, ...cuts) + listed();
  const noted = drawRows(words, line.height + gap);
  return (
    (noted.height <= tallest ? first(noted) : first(null) + listed()) +
    inParts(furtherDrawing('readings', say('Time line: the readings')), panels, readingsFoot(trial, scale))
  );
}

function furtherDrawing(what: string, title: string): About {
  return goingOn({ id: `${id}-${what}`, title, kind: id });
}

/** Readings in drawings of their own have the months below them, and the days of the cuts through them. */
function readingsFoot(trial: Trial, scale: DayScale): PartFoot {
  return {
    height: monthsHeight,
    draw: (foot) => [...cutLines(trial, scale, 0, foot), drawMonths(scale, foot, foot + 6)].join(''),
  };
}

/** The line with the days that have a name above it, the events' marks below it, and the months. */
function drawLine(
  milestones: readonly Milestone[],
  events: readonly Event[],
  scale: DayScale,
): { svg: string; height: number } {
  const above = drawMilestones(milestones, scale);
  const y = above.height;
  const marks = drawEventMarks(events, scale, y);
  const foot = y + marks.height;
  const day = { class: 'day', x1: scale.at(scale.first), x2: scale.at(scale.last), y1: y, y2: y };
  return {
    svg: [drawMonths(scale, y, foot), element('line', day), above.svg, marks.svg].join(''),
    height: foot + monthsHeight,
  };
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
