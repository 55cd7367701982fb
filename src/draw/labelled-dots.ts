import { narrow } from './grid-map.ts';
import { textWidth } from './text-width.ts';

/** Where a dot stands with its words beside it. */
export interface PlacedDot {
  /** 0 is the lowest line. */
  line: number;
  /** To which side of the dot its words run. */
  side: 'left' | 'right';
}

/** The room between what stands on one line, in px. */
const gap = 6;

/**
 * Places dots with words beside them on lines, none over another even where the drawing is as narrow as it
 * may become: each takes the lowest line where it fits. Words of dots in the right half run to the left, so
 * that none leaves the drawing.
 *
 * @param dots the place of each in percent of the width, and its words; none where they are empty
 * @param radius of a dot, in px
 * @param size of the words' type, in px
 */
export function placeLabelledDots(
  dots: readonly { percent: number; text: string }[],
  radius: number,
  size: number,
): PlacedDot[] {
  const lines: { from: number; to: number }[][] = [];
  const placed = new Map<number, PlacedDot>();
  const order = dots.map((_, index) => index).sort((a, b) => dots[a]!.percent - dots[b]!.percent);
  for (const index of order) {
    const { percent, text } = dots[index]!;
    const at = (percent / 100) * narrow;
    const reach = text === '' ? radius : radius + gap + textWidth(text, size);
    const side = percent > 50 ? 'left' : 'right';
    const [from, to] = side === 'left' ? [at - reach, at + radius] : [at - radius, at + reach];
    const clear = (line: readonly { from: number; to: number }[]) =>
      line.every((other) => to + gap <= other.from || other.to + gap <= from);
    let line = lines.findIndex(clear);
    if (line < 0) line = lines.push([]) - 1;
    lines[line]!.push({ from, to });
    placed.set(index, { line, side });
  }
  return dots.map((_, index) => placed.get(index)!);
}
