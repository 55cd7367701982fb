import { rootBetween } from '../root-between.ts';
import { type Comparison, powerOfComparison, requireComparison } from './power-of-comparison.ts';

/**
 * The smallest difference, in percent of the mean, that a trial of so many replicates would find with the power
 * asked for. Within 1e-9 relative. Throws outside the domain of a comparison, and for a power not above alpha.
 *
 * @param replicates units of each treatment, a whole number, at least 2
 * @param power the chance of finding it, above alpha and below 1, such as 0.8
 * @example detectableDifference({ cvPercent: 15, treatments: 2, design: 'completely randomised', alpha: 0.05,
 *   test: 't' }, 10, 0.8) // 19.9
 */
export function detectableDifference(
  comparison: Omit<Comparison, 'differencePercent'>,
  replicates: number,
  power: number,
): number {
  requireComparison('detectableDifference', comparison);
  if (!(power > comparison.alpha && power < 1)) {
    throw new RangeError(`detectableDifference requires a power between alpha and 1, not ${power}`);
  }
  const excess = (differencePercent: number) =>
    powerOfComparison({ ...comparison, differencePercent }, replicates) - power;
  let reach = 2 * comparison.cvPercent;
  while (excess(reach) < 0) reach *= 2;
  return rootBetween(excess, 0, reach, reach * 1e-11);
}
