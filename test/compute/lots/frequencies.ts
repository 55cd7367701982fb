/** What the tests of lots count and hold against chance. */
import type { Square } from '../../../src/compute/lots/standard-squares.ts';
import { chiSquareUpperTail } from '../../../src/statistics/distributions/chi-square.ts';

export function isLatin(square: Square): boolean {
  const complete = (line: readonly number[]) =>
    new Set(line).size === square.length && line.every((letter) => letter >= 0 && letter < square.length);
  return square.every(complete) && square.every((_, column) => complete(square.map((row) => row[column]!)));
}

/** How often each outcome came up in so many draws. */
export function frequencies(draws: number, draw: (seed: number) => string): Map<string, number> {
  const counts = new Map<string, number>();
  for (let seed = 0; seed < draws; seed += 1) {
    const outcome = draw(seed);
    counts.set(outcome, (counts.get(outcome) ?? 0) + 1);
  }
  return counts;
}

/** Pearson's chi-squared test that all of so many outcomes are as likely; outcomes never drawn count as 0. */
export function evenP(counts: ReadonlyMap<string, number>, outcomes: number): number {
  if (counts.size > outcomes) return 0;
  const draws = [...counts.values()].reduce((total, count) => total + count, 0);
  const expected = draws / outcomes;
  const drawn = [...counts.values()].reduce((total, count) => total + (count - expected) ** 2 / expected, 0);
  return chiSquareUpperTail(drawn + (outcomes - counts.size) * expected, outcomes - 1);
}
