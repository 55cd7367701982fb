import { say } from '../model/say.ts';
import type { FluidScale } from './fluid.ts';
import { type About, drawing } from './svg.ts';
import { axisHeight, valueAxes } from './value-axis.ts';

/** Draws one row of a figure from a height on. */
export type Row = (top: number) => { svg: string; height: number };

/** The axis at the foot of the rows. */
export interface Foot {
  /** Null where no value is known, and no axis is drawn. */
  scale: FluidScale | null;
  unit: string;
  ticks?: number;
}

/** What stands at the foot of every part, such as an axis: its height, and what is drawn from the rows' foot on. */
export interface PartFoot {
  height: number;
  draw(foot: number): string;
}

/** A printed page holds no more than this beside a heading and a caption, in px of 1/96 inch: Letter has 920. */
export const tallest = 800;
/** The rows of a part of a drawing that no page holds: two such, with their axes, share a page. */
const partHeight = 386;
const above = 4;

/**
 * Draws rows one below the other with the axis below them. What is taller than a printed page is drawn as
 * several drawings of whole rows, each with the axis, so that paper is never turned within a row.
 */
export function stackedRows(about: About, rows: readonly Row[], { scale, unit, ticks }: Foot): string {
  return inParts(about, rows, {
    height: axisHeight(unit),
    draw: (foot) => (scale === null ? '' : valueAxes(scale, foot, unit, ticks)),
  });
}

/** The same for rows that share another foot than the axis of a value. */
export function inParts(about: About, rows: readonly Row[], foot: PartFoot): string {
  const { drawn, heights, height } = drawRows(rows);
  if (height + foot.height <= tallest) return withFoot(about, drawn, height, foot);
  const parts = partsOf(rows, heights);
  return parts
    .map((part, index) => {
      const { drawn: ofPart, height: high } = drawRows(part);
      return withFoot(index === 0 ? about : continued(about, index + 1, parts.length), ofPart, high, foot);
    })
    .join('');
}

/** Draws rows one below the other, from a height on. */
export function drawRows(
  rows: readonly Row[],
  from = above,
): { drawn: string[]; heights: number[]; height: number } {
  const [drawn, heights]: [string[], number[]] = [[], []];
  let height = from;
  for (const row of rows) {
    const piece = row(height);
    drawn.push(piece.svg);
    heights.push(piece.height);
    height += piece.height;
  }
  return { drawn, heights, height };
}

function withFoot(about: About, rows: readonly string[], y: number, { height, draw }: PartFoot): string {
  return drawing(about, { height: y + height }, ...rows, draw(y));
}

/** As few parts as the height of one allows, all of about the same height. */
function partsOf(rows: readonly Row[], heights: readonly number[]): readonly (readonly Row[])[] {
  const most = Math.max(partHeight, ...heights);
  const fewest = filled(rows, heights, most);
  const whole = heights.reduce((total, height) => total + height, 0);
  for (let even = Math.ceil(whole / fewest.length); even < most; even += 1) {
    const parts = filled(rows, heights, even);
    if (parts.length === fewest.length) return parts;
  }
  return fewest;
}

/** Parts that each take the rows that come until it is full. */
function filled(rows: readonly Row[], heights: readonly number[], full: number): Row[][] {
  const parts: Row[][] = [];
  let room = 0;
  for (const [index, row] of rows.entries()) {
    const height = heights[index]!;
    if (parts.length === 0 || height > room) {
      parts.push([]);
      room = full;
    }
    parts.at(-1)!.push(row);
    room -= height;
  }
  return parts;
}

function continued({ id, title, kind }: About, part: number, count: number): About {
  return goingOn({
    id: `${id}-part-${String(part)}`,
    title: say('{title}, part {part} of {count}', { title, part, count }),
    kind,
  });
}

/** What is said of a drawing that goes on from the one above it. */
export function goingOn(about: Omit<About, 'description'>): About {
  return { ...about, description: [say('It goes on from the drawing above.')] };
}
