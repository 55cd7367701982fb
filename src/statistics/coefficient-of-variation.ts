import { meanOf } from './mean.ts';
import { present, type Recorded, type Statistic, statisticOf } from './statistic.ts';
import { standardDeviationOf } from './standard-deviation.ts';

/**
 * The coefficient of variation of recorded data, in percent: 100 times the standard deviation divided by the
 * mean. It means something only on a scale with a true zero, so it is null with a reason where the mean is not
 * above zero, as where fewer than two values are present.
 *
 * @example coefficientOfVariation([1, 2, 3]) // { value: 50, n: 3, missing: 0 }
 */
export function coefficientOfVariation(values: Recorded): Statistic {
  const name = 'a coefficient of variation';
  const { numbers, missing } = present(values, name);
  if (numbers.length >= 2 && meanOf(numbers) <= 0) {
    const reason = `${name} needs a mean above zero, and it is ${meanOf(numbers)}`;
    return { value: null, reason, n: numbers.length, missing };
  }
  return statisticOf(values, name, 2, (kept) => (100 * standardDeviationOf(kept)) / meanOf(kept));
}
