import gammaln from '@stdlib/math-base-special-gammaln';
import { betaLowerTail } from './beta.ts';
import { fUpperTail } from './fisher-f.ts';

/** Poisson weights below this part of the largest are left out. */
const negligible = 1e-17;

/**
 * The chance that noncentral F exceeds f: a sum of central tails weighted by Poisson chances with mean half the
 * noncentrality, every term positive. Within about 1e-11 relative (1e-9 at the largest noncentrality).
 *
 * Reference: N. L. Johnson, S. Kotz and N. Balakrishnan (1995), Continuous Univariate Distributions, volume 2,
 * 2nd edition, chapter 30.
 *
 * @param df1 positive and finite, fractional allowed
 * @param df2 positive and finite, fractional allowed
 * @param noncentrality the sum of squared differences of the expected means over the error variance, from 0
 *   to 1,000,000; 0 gives F
 * @example noncentralFUpperTail(3.35, 2, 27, 0) // 0.0502, the chance of central F
 */
export function noncentralFUpperTail(f: number, df1: number, df2: number, noncentrality: number): number {
  if (!(noncentrality >= 0 && noncentrality <= 1e6)) {
    throw new RangeError(
      `noncentralFUpperTail requires a noncentrality from 0 to 1000000, not ${noncentrality}`,
    );
  }
  if (!(df1 > 0 && df1 < Infinity && df2 > 0 && df2 < Infinity)) {
    throw new RangeError(`noncentralFUpperTail requires positive degrees of freedom, not ${df1} and ${df2}`);
  }
  if (noncentrality === 0) return fUpperTail(f, df1, df2);
  if (!(f > 0)) return 1;
  if (f === Infinity) return 0;
  const mean = noncentrality / 2;
  const ratio = (df1 / df2) * f;
  const tail = (count: number) =>
    betaLowerTail(1 / (1 + ratio), df2 / 2, df1 / 2 + count, ratio / (1 + ratio));
  const weight = (count: number) => Math.exp(count * Math.log(mean) - mean - gammaln(count + 1));
  let total = 0;
  let largest = 0;
  // Tails rise to 1 with the count: below the mean terms fall away fast, above it only the weights do.
  const middle = Math.floor(mean);
  for (let count = middle; ; count += 1) {
    const share = weight(count);
    const term = share * tail(count);
    total += term;
    largest = Math.max(largest, term);
    if (share < negligible * largest || share === 0) break;
  }
  for (let count = middle - 1; count >= 0; count -= 1) {
    const term = weight(count) * tail(count);
    total += term;
    if (term < negligible * total) break;
  }
  return Math.min(1, total);
}
