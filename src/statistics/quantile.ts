import { type Recorded, type Statistic, statisticOf } from './statistic.ts';

/**
 * The quantile of complete numbers already sorted ascending, by linear interpolation between the order
 * statistics at position (n - 1) p + 1: type 7 of Hyndman and Fan, R's default.
 *
 * Reference: R. J. Hyndman and Y. Fan (1996), Sample quantiles in statistical packages, The American
 * Statistician 50, 361-365.
 *
 * @param sorted at least one number, ascending
 * @param p the fraction below, 0 to 1
 */
export function quantileOfSorted(sorted: readonly number[] | Float64Array, p: number): number {
  if (sorted.length === 0) throw new RangeError('quantileOfSorted requires at least one value');
  if (!(p >= 0 && p <= 1)) throw new RangeError(`quantileOfSorted requires a fraction from 0 to 1, not ${p}`);
  const position = (sorted.length - 1) * p;
  const below = Math.floor(position);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (position - below) * (high - low);
}

/** A copy of the numbers, ascending. */
export function sorted(values: readonly number[]): number[] {
  return [...values].sort((a, b) => a - b);
}

/**
 * The quantile of recorded data (R type 7), in the unit of the data. Missing values (null) are left out and
 * counted; null with a reason where none is present.
 *
 * @example quantile([4, 1, null, 3, 2], 0.25) // { value: 1.75, n: 4, missing: 1 }
 */
export function quantile(values: Recorded, p: number): Statistic {
  return statisticOf(values, 'a quantile', 1, (numbers) => quantileOfSorted(sorted(numbers), p));
}
