import { meanOf } from '../statistics/mean.ts';
import { standardDeviationOf } from '../statistics/standard-deviation.ts';

/** What two weighings of the same pots tell of the scale and the hand; in the unit of the weights. */
export interface Repeatability {
  pairs: number;
  /** Second less first on average: a drift, as of drying leaves or a tare that moved. */
  meanDifference: number;
  /** The repeatability standard deviation. */
  standardDeviation: number;
  /** The difference of two weighings that is exceeded once in twenty. */
  limit: number;
}

/** 1.96 × √2: what the standard names 2.8. */
const forLimit = 1.96 * Math.SQRT2;

/**
 * Repeatability from pairs of weighings of the same pots by the same hand on the same scale within a short time:
 * standard deviation s_r = (standard deviation of the differences) / √2, limit r = 1.96 √2 s_r. ISO 5725 defines
 * both (parts 1 and 6; from memory). A drift common to all pairs is no part of it. Null below 2 pairs.
 */
export function repeatability(
  pairs: readonly (readonly [first: number, second: number])[],
): Repeatability | null {
  if (pairs.length < 2) return null;
  const differences = pairs.map(([first, second]) => second - first);
  const standardDeviation = standardDeviationOf(differences) / Math.SQRT2;
  return {
    pairs: pairs.length,
    meanDifference: meanOf(differences),
    standardDeviation,
    limit: forLimit * standardDeviation,
  };
}
