import { round } from './svg.ts';

/** Moves labels apart until none stands on another, keeping their order, and within limits where they have room. */
export function spread(
  places: readonly number[],
  apart = 13,
  [low, high]: readonly [number, number] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY],
): number[] {
  if (places.length === 0) return [];
  const order = places.map((_, index) => index).sort((a, b) => places[a]! - places[b]! || a - b);
  const moved = [...places];
  for (let index = 1; index < order.length; index += 1) {
    const [above, below] = [order[index - 1]!, order[index]!];
    moved[below] = Math.max(moved[below]!, moved[above]! + apart);
  }
  const [first, last] = [moved[order[0]!]!, moved[order.at(-1)!]!];
  const centred = first - (last - Math.max(...places)) / 2;
  const start = Math.max(low, Math.min(centred, high - (last - first)));
  return moved.map((place) => round(place - first + start));
}
