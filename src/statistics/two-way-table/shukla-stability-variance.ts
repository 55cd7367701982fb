import { sum } from '../sum.ts';

/**
 * Shukla's stability variance of each cultivar, from the ecovalences of a complete table of p cultivars in q
 * trials: (p (p - 1) W - sum of all W) / ((q - 1) (p - 1) (p - 2)), the unbiased estimate of the variance
 * of a cultivar's interaction (and error) over trials, in the square of the values' unit. It may come out
 * negative. Null, with the reason, for fewer than three cultivars or two trials.
 *
 * Reference: Shukla (1972) Heredity 29, 237-245.
 *
 * @example shuklaStabilityVariance([2, 4, 6], 3).values // [0, 3, 6]
 */
export function shuklaStabilityVariance(
  ecovalences: readonly number[],
  trials: number,
): { readonly values: readonly number[] } | { readonly values: null; readonly reason: string } {
  const p = ecovalences.length;
  if (p < 3) return { values: null, reason: 'fewer than three cultivars' };
  if (trials < 2) return { values: null, reason: 'fewer than two trials' };
  const total = sum(ecovalences);
  const divisor = (trials - 1) * (p - 1) * (p - 2);
  return { values: ecovalences.map((ecovalence) => (p * (p - 1) * ecovalence - total) / divisor) };
}
