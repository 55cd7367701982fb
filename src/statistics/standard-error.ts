import { type Recorded, type Statistic, statisticOf } from './statistic.ts';
import { varianceOf } from './variance.ts';

/** The standard error of the mean of complete numbers. Throws for fewer than two values. */
export function standardErrorOf(values: readonly number[] | Float64Array): number {
  return Math.sqrt(varianceOf(values) / values.length);
}

/**
 * The standard error of the mean of recorded data: the standard deviation divided by the square root of the
 * number of values present, in the unit of the data. It measures the mean's precision only where the values
 * are independent replicates. Null with a reason where fewer than two values are present.
 *
 * @example standardError([1, 3, null, 5, 7]).value // 1.2909944487358056, the square root of 5/3
 */
export function standardError(values: Recorded): Statistic {
  return statisticOf(values, 'a standard error', 2, standardErrorOf);
}
