import type { InBothUnits } from '../compute/format/format-quantity.ts';
import type { Container } from '../model/trial.ts';
import { gridLabels, marginsOf } from './grid-labels.ts';
import { type Orientation, orientationOf } from './orientation.ts';
import { type MarkedStatus, statusMark } from './status-mark.ts';
import { element, label } from './svg.ts';
import { textWidth } from './text-width.ts';
import { wrapText } from './wrap-text.ts';

/** The width of a phone's column: maps with few columns keep within it. */
export const narrow = 288;

/** One position of a map. */
export interface MapCell {
  row: number;
  column: number;
  /** A class of the style sheet that gives its shade: `step-1` and so on, or `blank`. */
  shade: string;
  number: InBothUnits | null;
  /** What stood there, in full and in short; null where the whole container had one treatment. */
  name: { full: string; short: string } | null;
  statuses: readonly MarkedStatus[];
}

/** A drawn map and what it used. */
export interface GridMap {
  svg: string;
  width: number;
  height: number;
  /** True where the short names stand in the cells, so that a key is needed. */
  shortNames: boolean;
  orientation: Orientation;
}

/** About what landmarks and row numbers take at both sides of a grid. */
const besides = 58;
const numberSize = 15;
const nameSize = 11.5;
const lineHeight = 13;

/** Draws a container's grid with a number, a name and marks in each cell; its top left corner is 0, 0. */
export function gridMap(container: Container, cells: readonly MapCell[], heading: string): GridMap {
  const orientation = orientationOf(container);
  const cell = cellSize(container, cells);
  const grid = { width: cell.width * container.columns, height: cell.height * container.rows };
  const margins = marginsOf(orientation, grid, container, heading);
  const placed = cells.map((each) => {
    const across = orientation.columnsReversed ? container.columns - each.column : each.column - 1;
    const x = margins.left + across * cell.width;
    const y = margins.top + (each.row - 1) * cell.height;
    return drawCell(each, cell.linesOf(each.name), { x, y, width: cell.width, height: cell.height });
  });
  const width = margins.left + grid.width + margins.right;
  return {
    svg: gridLabels(container, orientation, margins, cell) + placed.join(''),
    width: Math.max(width, narrow),
    height: margins.top + grid.height + margins.bottom,
    shortNames: !cell.full,
    orientation,
  };
}

interface CellSize {
  width: number;
  height: number;
  full: boolean;
  /** What is written of a name, line by line. */
  linesOf: (name: MapCell['name']) => readonly string[];
}

/** As wide as a phone's column allows, but never too narrow for what stands in the cells. */
function cellSize(container: Container, cells: readonly MapCell[]): CellSize {
  const numbers = cells.map(({ number }) =>
    Math.max(...[number?.metric ?? '', number?.us ?? ''].map((text) => textWidth(text, numberSize, true))),
  );
  const shorts = cells.map(({ name }) => textWidth(name?.short ?? '', nameSize));
  const least = Math.max(32, ...numbers.map((each) => each + 8), ...shorts.map((each) => each + 6));
  const width = Math.max(Math.ceil(least), Math.min(80, Math.floor((narrow - besides) / container.columns)));
  const names = new Set(cells.flatMap(({ name }) => (name ? [name.full] : [])));
  const wrapped = new Map([...names].map((name) => [name, wrapText(name, width - 5.5, nameSize)]));
  // A name cut within a word reads worse than its short form.
  const full = [...wrapped].every(([name, lines]) => lines.length <= 2 && lines.join(' ') === name);
  const count = full ? Math.max(0, ...[...wrapped.values()].map(({ length }) => length)) : 1;
  const linesOf = (name: MapCell['name']) =>
    name === null ? [] : full ? wrapped.get(name.full)! : [name.short];
  // A mark in the corner beside a number has room above it.
  const marked = cells.some(({ number, statuses }) => number !== null && statuses.length > 0);
  return { width, height: (marked ? 40 : 34) + count * lineHeight, full, linesOf };
}

function drawCell(
  cell: MapCell,
  lines: readonly string[],
  box: { x: number; y: number; width: number; height: number },
): string {
  const middle = box.x + box.width / 2;
  const below = lines.length * lineHeight;
  const baseline = box.y + (box.height - below) / 2 + 5.5;
  const alone = cell.number === null;
  const marks = cell.statuses.map((status, index) =>
    alone
      ? statusMark(status, middle + (index - (cell.statuses.length - 1) / 2) * 18, baseline - 5, 7)
      : statusMark(status, box.x + box.width - 8 - index * 12, box.y + 8, 4),
  );
  return element(
    'g',
    { class: `cell ${cell.shade}`, 'data-row': String(cell.row), 'data-column': String(cell.column) },
    element('rect', { x: box.x + 1, y: box.y + 1, width: box.width - 2, height: box.height - 2 }),
    ...(cell.number === null ? [] : cellNumbers(cell.number, middle, baseline)),
    ...lines.map((line, index) =>
      label(line, {
        class: 'name',
        x: middle,
        y: baseline + 1 + (index + 1) * lineHeight,
        'text-anchor': 'middle',
      }),
    ),
    ...marks,
  );
}

/** Metric unless the reader chose US units: a cell has no room for both. */
function cellNumbers(number: InBothUnits, x: number, y: number): string[] {
  const at = { x, y, 'text-anchor': 'middle' };
  if (number.us === null) return [label(number.metric, { class: 'number', ...at })];
  return [
    label(number.metric, { class: 'number metric', ...at }),
    label(number.us, { class: 'number us when-chosen', ...at }),
  ];
}
