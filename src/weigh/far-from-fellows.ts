import { medianOf } from '../statistics/median.ts';

/** What makes a median absolute deviation estimate a standard deviation of normal values: 1 / Φ⁻¹(3/4). */
const consistency = 1.4826;
/** How many spreads apart a weight is asked about. */
const spreads = 4;
const fewest = 5;
/** A spread is taken for no less than this part of the median: five like plants make the sixth no outlier. */
const leastSpread = 0.05;

/** The fellows' middle and the bounds beyond which a weight is asked about. */
export interface UsualRange {
  median: number;
  lower: number;
  upper: number;
  n: number;
}

/**
 * Where weights of plants of the same treatment so far lie: median ± 4 × 1.4826 × the median absolute deviation
 * from it. Both hold though nearly half of the fellows were mistyped, as mean and standard deviation would not
 * (Hampel's identifier; the constant from memory). Null where there are fewer than 5 fellows.
 *
 * @param fellows weights of the others, in any one unit
 */
export function usualRange(fellows: readonly number[]): UsualRange | null {
  if (fellows.length < fewest) return null;
  const median = medianOf(fellows);
  const deviation = medianOf(fellows.map((value) => Math.abs(value - median)));
  const spread = spreads * Math.max(consistency * deviation, leastSpread * median);
  return { median, lower: median - spread, upper: median + spread, n: fellows.length };
}
