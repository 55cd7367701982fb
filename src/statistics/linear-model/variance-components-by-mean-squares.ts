/** A stratum's error line: what its mean square estimates. */
export interface StratumError {
  readonly stratum: string;
  readonly df: number;
  readonly meanSquare: number | null;
  /** Observations in each of the stratum's groups; 1 for the finest. */
  readonly observationsPerGroup: number;
}

export interface VarianceComponent {
  readonly term: string;
  /** Null where its stratum, or the next finer one, has no degrees of freedom for error. */
  readonly variance: number | null;
  /** True where the estimate came out below zero. */
  readonly negative: boolean;
}

/**
 * Variance components of nested strata with groups of equal size, by equating mean squares to their
 * expectations: (this stratum's mean square - the next finer one's) / observations in a group. A negative
 * estimate is given as it came out. Strata are listed coarsest first.
 *
 * Reference: Searle, Casella & McCulloch (1992) Variance Components, section 3.6.
 */
export function varianceComponentsByMeanSquares(strata: readonly StratumError[]): VarianceComponent[] {
  return strata.map((stratum, k) => {
    const finer = strata[k + 1];
    if (!finer) return { term: stratum.stratum, variance: stratum.meanSquare, negative: false };
    if (stratum.meanSquare === null || finer.meanSquare === null) {
      return { term: stratum.stratum, variance: null, negative: false };
    }
    const variance = (stratum.meanSquare - finer.meanSquare) / stratum.observationsPerGroup;
    return { term: stratum.stratum, variance, negative: variance < 0 };
  });
}
