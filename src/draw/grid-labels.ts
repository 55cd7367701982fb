import type { Container } from '../model/trial.ts';
import type { Orientation } from './orientation.ts';
import { element, label } from './svg.ts';
import { textWidth } from './text-width.ts';
import { wrapText } from './wrap-text.ts';

const size = 13;
const line = 17;

/** What stands around a grid: widths and heights in px. */
export interface Margins {
  top: number;
  right: number;
  bottom: number;
  left: number;
  grid: { width: number; height: number };
  /** True where the landmarks of the sides stand upright beside the grid, else below it. */
  upright: boolean;
  headingLines: readonly string[];
  topLines: readonly string[];
  bottomLines: readonly string[];
  /** The landmarks of the sides below the grid, null where they stand upright. */
  sides: SideLines | null;
}

interface SideLines {
  left: readonly string[];
  right: readonly string[];
  /** True where both stand on one line. */
  together: boolean;
  /** In lines. */
  height: number;
}

/** Landmarks of the sides as arrows: on one line where both have room, else one below the other. */
function sideLinesOf(left: string, right: string, room: number): SideLines {
  const [toLeft, toRight] = [wrapText(`◂ ${left}`, room, size), wrapText(`${right} ▸`, room, size)];
  const one = toLeft.length === 1 && toRight.length === 1;
  const together = one && textWidth(toLeft[0]! + toRight[0]!, size) + 10 <= room;
  return { left: toLeft, right: toRight, together, height: together ? 1 : toLeft.length + toRight.length };
}

/** The room that headings, landmarks and the numbers of rows and columns take around a grid. */
export function marginsOf(
  orientation: Orientation,
  grid: { width: number; height: number },
  container: Container,
  heading: string,
): Margins {
  const { top, right, bottom, left } = orientation;
  const room = Math.max(grid.width, 200);
  const upright = [left, right].every((side) => side === null || textWidth(side, size) <= grid.height);
  const lines = (text: string | null) => (text === null ? [] : wrapText(text, room, size));
  const sides = upright || left === null || right === null ? null : sideLinesOf(left, right, room);
  const headingLines = heading === '' ? [] : wrapText(heading, room, size + 1, true);
  const side = upright && left !== null ? 19 : 0;
  const numbers = 8 + textWidth(String(container.rows), 12);
  const [topLines, bottomLines] = [lines(top), lines(bottom)];
  return {
    top: headingLines.length * line + topLines.length * line + 19,
    bottom: (bottomLines.length + (sides?.height ?? 0)) * line + 8,
    left: side + numbers,
    right: side + 4,
    grid,
    upright,
    headingLines,
    topLines,
    bottomLines,
    sides,
  };
}

/** Draws heading, landmarks and the numbers of rows and columns. */
export function gridLabels(
  container: Container,
  orientation: Orientation,
  margins: Margins,
  cell: { width: number; height: number },
): string {
  const { left, top, grid } = margins;
  const centre = left + grid.width / 2;
  const middle = top + grid.height / 2;
  const landmark = { class: 'landmark', 'text-anchor': 'middle' };
  const stacked = (lines: readonly string[], from: number) =>
    lines.map((text, index) => label(text, { ...landmark, x: centre, y: from + index * line }));
  const turned = (text: string | null, x: number, turn: number, side: string) =>
    text === null || !margins.upright
      ? ''
      : label(text, {
          ...landmark,
          'data-side': side,
          transform: `translate(${x.toFixed(2)} ${middle.toFixed(2)}) rotate(${String(turn)})`,
        });
  const below = top + grid.height + 17;
  const afterHeading = margins.headingLines.length * line;
  return element(
    'g',
    { class: 'around' },
    ...margins.headingLines.map((text, index) =>
      label(text, { class: 'heading', x: left, y: 14 + index * line }),
    ),
    element('g', { 'data-side': 'top' }, ...stacked(margins.topLines, afterHeading + 13)),
    ...columnNumbers(container, orientation, left, top - 5, cell.width),
    ...rowNumbers(container, left - 5, top, cell.height),
    element('g', { 'data-side': 'bottom' }, ...stacked(margins.bottomLines, below)),
    turned(orientation.left, 13, -90, 'left'),
    turned(orientation.right, left + grid.width + 8, 90, 'right'),
    sideLabels(margins, below + margins.bottomLines.length * line),
  );
}

function sideLabels({ sides, left, grid }: Margins, y: number): string {
  if (sides === null) return '';
  const from = sides.together ? 0 : sides.left.length;
  const end = left + Math.max(grid.width, 200);
  const written = (lines: readonly string[], x: number, anchor: string, first: number) =>
    lines.map((text, index) =>
      label(text, { class: 'landmark', x, y: y + (first + index) * line, 'text-anchor': anchor }),
    );
  return (
    element('g', { 'data-side': 'left' }, ...written(sides.left, left, 'start', 0)) +
    element('g', { 'data-side': 'right' }, ...written(sides.right, end, 'end', from))
  );
}

function columnNumbers(
  container: Container,
  orientation: Orientation,
  left: number,
  y: number,
  width: number,
): string[] {
  return Array.from({ length: container.columns }, (_, index) => {
    const across = orientation.columnsReversed ? container.columns - 1 - index : index;
    const x = left + (across + 0.5) * width;
    return label(String(index + 1), { class: 'count', x, y, 'text-anchor': 'middle' });
  });
}

function rowNumbers(container: Container, x: number, top: number, height: number): string[] {
  return Array.from({ length: container.rows }, (_, index) =>
    label(String(index + 1), {
      class: 'count',
      x,
      y: top + (index + 0.5) * height + 4,
      'text-anchor': 'end',
    }),
  );
}
