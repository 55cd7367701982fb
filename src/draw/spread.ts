import { round } from './svg.ts';

/**
 * Moves labels apart until none stands on another, keeping their order, and within limits where they have room:
 * each stays as near its place as the others allow. Without the room each label takes, their places may only
 * rise, and the nearest places that do (by least squares) are the means of the runs that would fall.
 */
export function spread(
  places: readonly number[],
  apart = 13,
  [low, high]: readonly [number, number] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY],
): number[] {
  const order = places.map((_, index) => index).sort((a, b) => places[a]! - places[b]! || a - b);
  const runs: { sum: number; count: number }[] = [];
  for (const [rank, index] of order.entries()) {
    let run = { sum: places[index]! - rank * apart, count: 1 };
    while (runs.length > 0 && runs.at(-1)!.sum / runs.at(-1)!.count > run.sum / run.count) {
      const before = runs.pop()!;
      run = { sum: before.sum + run.sum, count: before.count + run.count };
    }
    runs.push(run);
  }
  const highest = Math.max(low, high - (places.length - 1) * apart);
  const starts = runs.flatMap(({ sum, count }) =>
    Array<number>(count).fill(Math.min(highest, Math.max(low, sum / count))),
  );
  const moved = [...places];
  for (const [rank, index] of order.entries()) moved[index] = round(starts[rank]! + rank * apart);
  return moved;
}
