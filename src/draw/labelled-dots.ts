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

/** Between two dots without words, where they stand close. */
const closeGap = 1;

/**
 * Places dots with words beside them on lines, none over another even where the drawing is as narrow as it
 * may become: each takes the lowest line where it fits. Words of dots in the right half run to the left, so
 * that none leaves the drawing.
 *
 * @param dots the place of each in percent of the width, and its words; none where they are empty
 * @param radius of a dot, in px
 * @param size of the words' type, in px
 * @param reach so many lines above and below are taken up by words too: more than 0 where lines stand close
 */
export function placeLabelledDots(
  dots: readonly { percent: number; text: string }[],
  radius: number,
  size: number,
  reach = 0,
): PlacedDot[] {
  const lines: { from: number; to: number }[][] = [];
  const placed = new Map<number, PlacedDot>();
  const order = dots.map((_, index) => index).sort((a, b) => dots[a]!.percent - dots[b]!.percent);
  for (const index of order) {
    const { percent, text } = dots[index]!;
    const at = (percent / 100) * narrow;
    const width = text === '' ? radius : radius + gap + textWidth(text, size);
    const side = percent > 50 ? 'left' : 'right';
    const [from, to] = side === 'left' ? [at - width, at + radius] : [at - radius, at + width];
    const apart = reach > 0 && text === '' ? closeGap : gap;
    const clear = (line: readonly { from: number; to: number }[] = []) =>
      line.every((other) => to + apart <= other.from || other.to + apart <= from);
    const taken = (line: number) =>
      text === '' ? [line] : Array.from({ length: 2 * reach + 1 }, (_, step) => line - reach + step);
    let line = 0;
    while (!taken(line).every((each) => clear(lines[each]))) line += 1;
    for (const each of taken(line)) if (each >= 0) (lines[each] ??= []).push({ from, to });
    placed.set(index, { line, side });
  }
  return dots.map((_, index) => placed.get(index)!);
}
