import { digitsOfUncertainty } from './digits-of-uncertainty.ts';
import { digitsOfValue } from './digits-of-value.ts';

/**
 * Decimals of a difference between a mean of nA readings and one of nB, and of its limits. As for a mean
 * (see digitsOfMean), the two roundings' uncertainties added in quadrature: r sqrt(1/(12 nA) + 1/(12 nB)).
 *
 * @example digitsOfDifference(1, 12, 12) // 0, since the rounding alone is uncertain by 0.12 g
 */
export function digitsOfDifference(resolution: number | null, nA: number, nB: number): number {
  if (!(nA >= 1 && nB >= 1)) {
    throw new RangeError('digitsOfDifference requires at least one reading on each side');
  }
  if (resolution === null) return 1;
  const uncertainty = resolution * Math.sqrt(1 / (12 * nA) + 1 / (12 * nB));
  return Math.max(digitsOfValue(resolution), digitsOfUncertainty(uncertainty));
}
