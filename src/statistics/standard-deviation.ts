import { type Recorded, type Statistic, statisticOf } from './statistic.ts';
import { varianceOf } from './variance.ts';

/** The sample standard deviation of complete numbers (divisor n - 1). Throws for fewer than two values. */
export function standardDeviationOf(values: readonly number[] | Float64Array): number {
  return Math.sqrt(varianceOf(values));
}

/**
 * The sample standard deviation of recorded data, the square root of the variance, in the unit of the data.
 * Missing values (null) are left out and counted; null with a reason where fewer than two are present.
 *
 * @example standardDeviation([1, 2, 3]) // { value: 1, n: 3, missing: 0 }
 */
export function standardDeviation(values: Recorded): Statistic {
  return statisticOf(values, 'a standard deviation', 2, standardDeviationOf);
}
