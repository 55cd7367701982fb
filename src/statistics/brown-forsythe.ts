import { medianOf } from './median.ts';
import { oneWaySumsOfSquares } from './one-way-sums-of-squares.ts';
import { present, type Recorded } from './statistic.ts';

export type BrownForsythe =
  | { f: number; df1: number; df2: number; p: number }
  | { f: null; df1: null; df2: null; p: null; reason: string };

const none = (reason: string): BrownForsythe => ({ f: null, df1: null, df2: null, p: null, reason });

/**
 * Brown and Forsythe's test that groups are equally spread: the one-way analysis of variance of the absolute
 * deviations from each group's median (Levene's test, median-centred). Groups may differ in size; missing
 * values (null) are left out.
 *
 * Null with a reason where there are fewer than two groups with values, where a group has a single value (its
 * deviation is 0 whatever its spread), and where deviations do not differ within groups, as with groups of two.
 *
 * Reference: M. B. Brown and A. B. Forsythe (1974), Robust tests for the equality of variances, Journal of the
 * American Statistical Association 69, 364-367.
 *
 * @example brownForsythe([[1, 2, 3], [1, 5, 9, 12]]).df2 // 5
 */
export function brownForsythe(groups: readonly Recorded[]): BrownForsythe {
  const numbers = groups
    .map((group) => present(group, 'brownForsythe').numbers)
    .filter(({ length }) => length > 0);
  if (numbers.length < 2) return none('equal spread needs at least two groups with values');
  if (numbers.some(({ length }) => length < 2)) {
    return none('a group has a single value, which shows nothing of its spread');
  }
  const deviations = numbers.map((group) => {
    const middle = medianOf(group);
    return group.map((value) => Math.abs(value - middle));
  });
  const squares = numbers.flat().reduce((total, value) => total + value * value, 0);
  const analysis = oneWaySumsOfSquares(deviations);
  if (analysis.f === null || analysis.p === null || analysis.within.sumOfSquares <= 1e-29 * squares) {
    return none(
      'distances from the median do not differ within the groups, so there is no error to judge by',
    );
  }
  return { f: analysis.f, df1: analysis.between.df, df2: analysis.within.df, p: analysis.p };
}
