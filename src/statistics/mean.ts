import { type Recorded, type Statistic, statisticOf } from './statistic.ts';
import { sum } from './sum.ts';
import { wholeNumbers } from './whole-numbers.ts';

/**
 * The arithmetic mean of complete numbers: their sum divided by their count. Decimals are added as whole
 * numbers, without rounding; other numbers are corrected once by the mean of what is left over.
 * Throws where there are no values.
 *
 * @example meanOf([2, 4, 9]) // 5
 */
export function meanOf(values: readonly number[] | Float64Array): number {
  const n = values.length;
  if (n === 0) throw new RangeError('meanOf requires at least one value');
  const decimals = wholeNumbers(values);
  if (decimals) return sum(decimals.whole) / (n * decimals.scale);
  const first = sum(values) / n;
  return first + sum(Float64Array.from(values, (value) => value - first)) / n;
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
