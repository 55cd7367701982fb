import { studentizedRangeUpperQuantile, studentizedRangeUpperTail } from './studentized-range.ts';

/** A difference of two means among several, with limits that hold for all pairs at once, in the means' unit. */
export interface TukeyKramer {
  lower: number;
  upper: number;
  p: number;
}

/**
 * Tukey and Kramer's comparison of two of several means: |difference| times the square root of 2 over its
 * standard error is referred to the studentized range of as many groups as there are means. Exact where the
 * standard errors are all alike, a little on the safe side elsewhere.
 *
 * References: J. W. Tukey (1953), The problem of multiple comparisons; C. Y. Kramer (1956), Extension of multiple
 * range tests to group means with unequal numbers of replications, Biometrics 12, 307-310.
 *
 * @param groups how many means are compared, a whole number from 2
 * @param df degrees of freedom of the standard error, fractional allowed
 * @example tukeyKramer(-0.371, 0.27878160840554955, 27, 3).p // 0.3908711442021068
 */
export function tukeyKramer(
  difference: number,
  standardError: number,
  df: number,
  groups: number,
  alpha = 0.05,
): TukeyKramer {
  return tukeyKramerOf(groups, alpha)(difference, standardError, df);
}

/**
 * The same for many pairs of one family of means: the quantile, which takes longest, is found once for all pairs
 * that share degrees of freedom.
 *
 * @param groups how many means are compared, a whole number from 2
 */
export function tukeyKramerOf(
  groups: number,
  alpha = 0.05,
): (difference: number, standardError: number, df: number) => TukeyKramer {
  const quantiles = new Map<number, number>();
  return (difference, standardError, df) => {
    const quantile = quantiles.get(df) ?? studentizedRangeUpperQuantile(alpha, groups, df);
    quantiles.set(df, quantile);
    const reach = (quantile * standardError) / Math.SQRT2;
    const q = (Math.abs(difference) * Math.SQRT2) / standardError;
    return {
      lower: difference - reach,
      upper: difference + reach,
      p: studentizedRangeUpperTail(q, groups, df),
    };
  };
}
