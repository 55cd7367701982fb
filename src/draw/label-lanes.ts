import { narrow } from './grid-map.ts';
import { textWidth } from './text-width.ts';

/** A label beside a mark: on which lane it stands and to which side of the mark it runs. */
export interface PlacedLabel {
  /** 0 is the lane next to the marks. */
  lane: number;
  anchor: 'start' | 'end';
}

/** The room between two labels of a lane, in px. */
const gap = 8;

/**
 * Places labels of marks on lanes so that none meets another even where the drawing is as narrow as it may
 * become. Labels of marks in the right half run to the left, so that none leaves the drawing.
 *
 * @param marks the place of each mark in percent of the width, and its label
 * @param size the type size in px
 */
export function labelLanes(marks: readonly { percent: number; text: string }[], size: number): PlacedLabel[] {
  const lanes: { from: number; to: number }[][] = [];
  const placed = new Map<number, PlacedLabel>();
  const order = marks.map((_, index) => index).sort((a, b) => marks[a]!.percent - marks[b]!.percent);
  for (const index of order) {
    const { percent, text } = marks[index]!;
    const at = (percent / 100) * narrow;
    const width = textWidth(text, size);
    const anchor = percent > 50 ? ('end' as const) : ('start' as const);
    const [from, to] = anchor === 'end' ? [at - width, at] : [at, at + width];
    const clear = (lane: readonly { from: number; to: number }[]) =>
      lane.every((other) => to + gap <= other.from || other.to + gap <= from);
    let lane = lanes.findIndex(clear);
    if (lane < 0) lane = lanes.push([]) - 1;
    lanes[lane]!.push({ from, to });
    placed.set(index, { lane, anchor });
  }
  return marks.map((_, index) => placed.get(index)!);
}
