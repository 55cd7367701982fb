import { rootBetween } from '../root-between.ts';

/**
 * The x > 0 at which a decreasing upper tail equals p, solved on the logarithms of both, where the tails of
 * the distributions here are nearly straight. Above a half the lower tail is matched instead, so that neither
 * end loses digits. p of 0 gives Infinity, p of 1 gives 0.
 *
 * @param start any positive first guess
 */
export function quantileOfTail(
  p: number,
  upperTail: (x: number) => number,
  lowerTail: (x: number) => number,
  start: number,
): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`a quantile requires a chance from 0 to 1, not ${p}`);
  if (p === 0) return Infinity;
  if (p === 1) return 0;
  const target = p <= 0.5 ? Math.log(p) : Math.log1p(-p);
  const excess = (logX: number) => {
    const chance = p <= 0.5 ? upperTail(Math.exp(logX)) : lowerTail(Math.exp(logX));
    const logChance = Math.max(Math.log(chance), -1e4);
    return p <= 0.5 ? logChance - target : target - logChance;
  };
  let low = Math.log(start);
  let high = low;
  let stride = 0.25;
  for (; excess(low) < 0; stride *= 2) {
    high = low;
    low -= stride;
    if (low < -745) return 0;
  }
  for (stride = 0.25; excess(high) > 0; stride *= 2) {
    low = high;
    high += stride;
    if (high > 709.7) return Infinity;
  }
  return low === high ? Math.exp(low) : Math.exp(rootBetween(excess, low, high, 1e-15));
}
