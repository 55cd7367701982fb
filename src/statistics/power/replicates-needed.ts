import { type Comparison, errorDegreesOfFreedom, powerOfComparison } from './power-of-comparison.ts';

/** More replicates than this are not looked for: no grower's trial has them. */
const mostReplicates = 1000;

export type ReplicatesNeeded =
  | { replicates: number; power: number; df: number }
  | { replicates: null; power: null; df: null; reason: string };

/**
 * The fewest replicates of each treatment with which a difference would be found with at least the power asked
 * for, the error degrees of freedom being those that so many replicates give. At least two.
 *
 * @param power the chance of finding it, such as 0.8 or 0.9
 * Null with a reason where even 1,000 replicates are too few. Throws outside the domain of a comparison.
 *
 * @example replicatesNeeded({ differencePercent: 20, cvPercent: 15, treatments: 2,
 *   design: 'completely randomised', alpha: 0.05, test: 't' }, 0.8).replicates // 10
 */
export function replicatesNeeded(comparison: Comparison, power: number): ReplicatesNeeded {
  if (!(power > 0 && power < 1)) {
    throw new RangeError(`replicatesNeeded requires a power between 0 and 1, not ${power}`);
  }
  if (!(comparison.differencePercent > 0)) {
    const { differencePercent } = comparison;
    throw new RangeError(`replicatesNeeded requires a difference above 0, not ${differencePercent}`);
  }
  const enough = (replicates: number) => powerOfComparison(comparison, replicates) >= power;
  // Power rises with every replicate: double until enough, then halve the gap.
  let few = 1;
  let many = 2;
  while (!enough(many)) {
    if (many >= mostReplicates) {
      const reason = `more than ${mostReplicates} replicates of each treatment would be needed`;
      return { replicates: null, power: null, df: null, reason };
    }
    few = many;
    many = Math.min(2 * many, mostReplicates);
  }
  while (many - few > 1) {
    const middle = Math.floor((few + many) / 2);
    if (enough(middle)) many = middle;
    else few = middle;
  }
  const df = errorDegreesOfFreedom(comparison.design, comparison.treatments, many);
  return { replicates: many, power: powerOfComparison(comparison, many), df };
}
