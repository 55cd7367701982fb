import { type Recorded, type Statistic, statisticOf } from './statistic.ts';
import { sumOfSquares } from './sum-of-squares.ts';

/**
 * The sample variance of complete numbers: the sum of squared deviations from their mean, divided by one less
 * than their count. Throws for fewer than two values.
 *
 * @example varianceOf([1, 2, 3]) // 1
 */
export function varianceOf(values: readonly number[] | Float64Array): number {
  if (values.length < 2)
    throw new RangeError(`varianceOf requires at least two values, not ${values.length}`);
  return sumOfSquares(values) / (values.length - 1);
}

/**
 * The sample variance of recorded data, in the unit of the data squared, divisor n - 1. Missing values (null)
 * are left out and counted; null with a reason where fewer than two values are present.
 *
 * @example variance([1, 2, null, 3]) // { value: 1, n: 3, missing: 1 }
 */
export function variance(values: Recorded): Statistic {
  return statisticOf(values, 'a variance', 2, varianceOf);
}
