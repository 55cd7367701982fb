import { say } from '../model/say.ts';
import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import type { Reading, Trial } from '../model/trial.ts';
import type { DayScale } from './day-scale.ts';
import { niceDomain } from './fluid.ts';
import { spread } from './spread.ts';
import type { Row } from './stacked-rows.ts';
import { element, label, round } from './svg.ts';
import { uprightLabel, uprightLevels } from './value-axis.ts';

/** A kind of reading that has a panel. */
type Kind = 'level' | 'ec' | 'ph' | 'temperature';

/** The panels, with the words and units of the data dictionary. */
export const readingKinds: readonly (readonly [Kind, string])[] = [
  ['level', 'water level (cm)'],
  ['ec', 'EC (mS/cm at 25 °C)'],
  ['ph', 'pH'],
  ['temperature', 'temperature (°C)'],
];

const lineHeight = 70;
const headHeight = 38;
/** The height of a panel with its heading, in px: room for the names of its lines one below the other. */
const panelHeight = (lines: number): number => headHeight + Math.max(lineHeight, lines * 13 + 4);
const styles = ['', ' second', ' third', ' fourth'];
/** A container's line style, by its place in the trial: a class of the style sheet. */
export const lineStyle = (index: number): string => styles[index % styles.length]!;

/** The kinds of reading that the trial has, without their units. */
export function readKinds(trial: Trial): string[] {
  return presentKinds(trial).map(([, words]) => say(words).replace(/ \(.*/, ''));
}

const presentKinds = ({ readings }: Trial) =>
  readingKinds.filter(([kind]) => readings.some((reading) => reading[kind] !== null));

/** Small panels one below the other, one for each kind of reading, each container a line. */
export function readingsPanels(trial: Trial, scale: DayScale): Row[] {
  const containers = trial.metadata.containers.map(({ id }) => id);
  return presentKinds(trial).flatMap(([kind, words]) => {
    const lines = linesOf(trial.readings, containers, kind);
    return linePanels(lines, kind, { words: say(words), unit: '' }, scale);
  });
}

/** More names than these one below the other fill a printed page. */
const mostLines = 40;

/** One panel with all lines, or several on one scale where the names of so many have no room. */
export function linePanels(
  lines: readonly Line[],
  kind: string,
  { words, unit }: { words: string; unit: string },
  scale: DayScale,
): Row[] {
  const domain = domainOf(lines);
  const each = Math.ceil(lines.length / Math.ceil(lines.length / mostLines));
  const groups = Array.from({ length: Math.ceil(lines.length / each) }, (_, index) =>
    lines.slice(index * each, (index + 1) * each),
  );
  return groups.map((group) => {
    const [first, last] = [group[0]!.container, group.at(-1)!.container];
    const named =
      groups.length === 1 ? words : say('{what}, {first} to {last}', { what: words, first, last });
    return (top) => ({
      svg: linePanel(group, kind, { words: named, unit, domain }, scale, top),
      height: panelHeight(group.length),
    });
  });
}

function domainOf(lines: readonly Line[]): readonly [number, number] {
  const [lowest = 0, highest = 1] = extent(lines.flatMap(({ points }) => points.map(({ value }) => value)));
  return niceDomain([lowest, highest], 3);
}

/** One container's readings, in the order of their days. */
export interface Line {
  container: string;
  style: string;
  points: { date: string; value: number }[];
}

/**
 * A panel with a line for each container, its name at the line's end.
 *
 * @param head its words above it and the unit that follows them; '' where the words say it and none is chosen
 */
function linePanel(
  lines: readonly Line[],
  kind: string,
  { words, unit, domain }: { words: string; unit: string; domain: readonly [number, number] },
  scale: DayScale,
  top: number,
): string {
  const base = top + panelHeight(lines.length) - 8;
  const y = scaleLinear()
    .domain(domain)
    .range([base, top + headHeight - 4]);
  const grid = uprightLevels(domain, unit, 3, (value, text) => {
    const at = round(y(value));
    return (
      element('line', { class: 'gridline', x1: scale.at(scale.first), x2: '88%', y1: at, y2: at }) +
      label(text, { class: 'tick', x: 0, y: at + 4 })
    );
  });
  return element(
    'g',
    { class: 'panel', 'data-reading': kind },
    uprightLabel(words, unit, { x: 0, y: top + 19 }),
    grid,
    ...lines.map((line) => lineOf(line, scale, y, base)),
    ...endLabels(lines, scale, y, [top + headHeight - 4, base]),
  );
}

/** Ends that are nearer than this, in percent of the width, share a column of names. */
const near = 9;

/** Each line's name at its end; names of lines that end near one another are moved apart. */
function endLabels(
  lines: readonly Line[],
  scale: DayScale,
  y: (value: number) => number,
  limits: readonly [number, number],
): string[] {
  const ends = lines
    .map(({ container, points }) => ({ container, ...points.at(-1)! }))
    .sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
  const columns: (typeof ends)[] = [];
  for (const end of ends) {
    const column = columns.at(-1);
    if (column && scale.percent(column[0]!.date) - scale.percent(end.date) < near) column.push(end);
    else columns.push([end]);
  }
  return columns.flatMap((column) => {
    const places = spread(
      column.map(({ value }) => y(value)),
      13,
      limits,
    );
    return column.map(({ container }, index) =>
      label(container, { class: 'tick', x: scale.at(column[0]!.date), dx: 7, y: places[index]! + 4 }),
    );
  });
}

function linesOf(readings: readonly Reading[], containers: readonly string[], kind: Kind): Line[] {
  return containers
    .map((container, index) => ({
      container,
      style: lineStyle(index),
      points: readings
        .flatMap((reading) => {
          const value = reading[kind];
          return reading.container === container && value !== null ? [{ date: reading.date, value }] : [];
        })
        .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0)),
    }))
    .filter(({ points }) => points.length > 0);
}

/** A line is stretched to the width; its stroke is not. */
function lineOf(
  { container, style, points }: Line,
  scale: DayScale,
  y: (value: number) => number,
  base: number,
): string {
  const path = points
    .map(
      ({ date, value }, index) =>
        `${index === 0 ? 'M' : 'L'}${String(scale.percent(date))} ${String(round(y(value) - base))}`,
    )
    .join('');
  return element(
    'g',
    { class: 'line', 'data-container': container },
    stretched(
      base,
      element('path', { class: `curve${style}`, d: path, 'vector-effect': 'non-scaling-stroke' }),
    ),
    ...points.map(({ date, value }) =>
      element('circle', { class: 'dot', cx: scale.at(date), cy: y(value), r: 3 }),
    ),
  );
}

/** A layer whose x runs from 0 to 100 over the width and whose y is in px, 0 at `base`. */
export function stretched(base: number, ...children: readonly string[]): string {
  const height = 100;
  return element(
    'svg',
    {
      x: 0,
      y: base - height,
      width: '100%',
      height,
      viewBox: `0 ${String(-height)} 100 ${String(height)}`,
      preserveAspectRatio: 'none',
      overflow: 'visible',
    },
    ...children,
  );
}
