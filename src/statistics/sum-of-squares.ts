import { centred } from './centred.ts';
import { sum } from './sum.ts';

/**
 * The sum of squared deviations from the mean, in the unit of the data squared: centred first, then squared in
 * a second pass, both sums compensated, less the square of what the centring left over (the corrected two-pass
 * algorithm). No values, or one, give 0.
 *
 * Reference: T. F. Chan, G. H. Golub and R. J. LeVeque (1983), Algorithms for computing the sample variance,
 * The American Statistician 37, 242-247, equation 1.7.
 *
 * @example sumOfSquares([1, 2, 3]) // 2
 */
export function sumOfSquares(values: readonly number[] | Float64Array): number {
  if (values.length < 2) return 0;
  const { deviations, scale } = centred(values);
  const leftOver = sum(deviations);
  const squares = sum(deviations.map((deviation) => deviation * deviation));
  return Math.max(0, squares - (leftOver * leftOver) / values.length) / (scale * scale);
}
