import { chiSquareLowerTail } from '../distributions/chi-square.ts';
import { fUpperQuantile } from '../distributions/fisher-f.ts';
import { noncentralFUpperTail } from '../distributions/noncentral-f.ts';
import { noncentralTLowerTail, noncentralTUpperTail } from '../distributions/noncentral-t.ts';
import { tUpperQuantile } from '../distributions/student-t.ts';

/** How a next trial would be laid out, which settles its error degrees of freedom. */
export type NextDesign = 'completely randomised' | 'randomised blocks';

export interface Comparison {
  /** How far apart, in percent of the mean; above 0. */
  differencePercent: number;
  /** The coefficient of variation of experimental units, in percent of the same mean; above 0. */
  cvPercent: number;
  /** How many treatments the trial has, at least 2. */
  treatments: number;
  design: NextDesign;
  /** The error degrees of freedom of a layout that is at hand; else those that the design gives. */
  errorDf?: number;
  /** The two-sided size of the test, above 0 and below 1. */
  alpha: number;
  /**
   * `t`: one pair of treatments that differ by so much, by the t test with the whole trial's error.
   * `F`: any difference, by the F test, where two treatments differ by so much and the others lie midway.
   */
  test: 't' | 'F';
}

/** Error degrees of freedom: treatments (replicates - 1), less one a block beyond the first in blocks. */
export function errorDegreesOfFreedom(design: NextDesign, treatments: number, replicates: number): number {
  return design === 'completely randomised'
    ? treatments * (replicates - 1)
    : (treatments - 1) * (replicates - 1);
}

/** Throws where a comparison lies outside its domain, naming what was refused. */
export function requireComparison(
  caller: string,
  { cvPercent, treatments, errorDf, alpha }: Omit<Comparison, 'differencePercent'>,
): void {
  if (!(cvPercent > 0 && cvPercent < Infinity)) {
    throw new RangeError(`${caller} requires a coefficient of variation above 0, not ${cvPercent}`);
  }
  if (!Number.isInteger(treatments) || treatments < 2) {
    throw new RangeError(`${caller} requires at least two treatments, not ${treatments}`);
  }
  if (errorDf !== undefined && !(errorDf > 0 && errorDf < Infinity)) {
    throw new RangeError(`${caller} requires error degrees of freedom above 0, not ${errorDf}`);
  }
  if (!(alpha > 0 && alpha < 1))
    throw new RangeError(`${caller} requires an alpha between 0 and 1, not ${alpha}`);
}

/**
 * The power of a trial: the chance that the test finds the difference, given that it is there. Differences are
 * in standard errors, d sqrt(r / 2) / CV, by noncentral t counting both tails; or their squares, by noncentral F.
 *
 * Reference: W. G. Cochran and G. M. Cox (1957), Experimental Designs, 2nd edition, section 2.2.
 *
 * @param replicates units of each treatment, a whole number, at least 2
 */
export function powerOfComparison(comparison: Comparison, replicates: number): number {
  const { differencePercent, cvPercent, treatments, design, alpha, test } = comparison;
  requireComparison('powerOfComparison', comparison);
  if (!(differencePercent >= 0 && differencePercent < Infinity)) {
    throw new RangeError(`powerOfComparison requires a difference of at least 0, not ${differencePercent}`);
  }
  if (!Number.isInteger(replicates) || replicates < 2) {
    throw new RangeError(`powerOfComparison requires at least two replicates, not ${replicates}`);
  }
  const df = comparison.errorDf ?? errorDegreesOfFreedom(design, treatments, replicates);
  const standardised = (differencePercent / cvPercent) * Math.sqrt(replicates / 2);
  if (standardised > 1000) return powerOfPlainDifference(standardised, treatments, df, alpha, test);
  if (test === 't') {
    const critical = tUpperQuantile(alpha / 2, df);
    const above = noncentralTUpperTail(critical, df, standardised);
    return Math.min(1, above + noncentralTLowerTail(-critical, df, standardised));
  }
  const critical = fUpperQuantile(alpha, treatments - 1, df);
  return noncentralFUpperTail(critical, treatments - 1, df, standardised * standardised);
}

/** So many standard errors apart, only the estimate of error matters: it must not come out too large. */
function powerOfPlainDifference(
  standardised: number,
  treatments: number,
  df: number,
  alpha: number,
  test: 't' | 'F',
): number {
  const df1 = test === 't' ? 1 : treatments - 1;
  const critical = fUpperQuantile(alpha, df1, df);
  return chiSquareLowerTail((df * standardised * standardised) / (df1 * critical), df);
}
