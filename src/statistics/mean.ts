import { type Recorded, type Statistic, statisticOf } from './statistic.ts';
import { sum } from './sum.ts';

/**
 * The arithmetic mean of complete numbers: their sum divided by their count, then corrected once by the mean
 * of what is left over. Throws where there are no values.
 *
 * @example meanOf([2, 4, 9]) // 5
 */
export function meanOf(values: readonly number[] | Float64Array): number {
  const n = values.length;
  if (n === 0) throw new RangeError('meanOf requires at least one value');
  const first = sum(values) / n;
  const residuals = new Float64Array(n);
  for (let index = 0; index < n; index += 1) residuals[index] = values[index]! - first;
  return first + sum(residuals) / n;
}

/**
 * The arithmetic mean of recorded data, in the unit of the data. Missing values (null) are left out and
 * counted; null with a reason where no value is present.
 *
 * @example mean([2, null, 4]) // { value: 3, n: 2, missing: 1 }
 */
export function mean(values: Recorded): Statistic {
  return statisticOf(values, 'a mean', 1, meanOf);
}
