import { meanOf } from './mean.ts';
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
  const n = values.length;
  if (n < 2) return 0;
  const centre = meanOf(values);
  const deviations = new Float64Array(n);
  const squares = new Float64Array(n);
  for (let index = 0; index < n; index += 1) {
    const deviation = values[index]! - centre;
    deviations[index] = deviation;
    squares[index] = deviation * deviation;
  }
  const leftOver = sum(deviations);
  return Math.max(0, sum(squares) - (leftOver * leftOver) / n);
}
