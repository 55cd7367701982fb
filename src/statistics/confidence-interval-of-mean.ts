import { tUpperQuantile } from './distributions/student-t.ts';
import { meanOf } from './mean.ts';
import { present, type Recorded } from './statistic.ts';
import { standardErrorOf } from './standard-error.ts';

/** Limits in the unit of the data, or null with the reason. */
export type IntervalOfMean =
  | { lower: number; upper: number; n: number; missing: number }
  | { lower: null; upper: null; reason: string; n: number; missing: number };

/**
 * The confidence interval of a mean by Student's t: the mean plus and minus the standard error times t on
 * n - 1 degrees of freedom. It supposes independent replicates. Missing values (null) are left out and
 * counted; null with a reason where fewer than two values are present.
 *
 * @param level the chance of coverage, above 0 and below 1
 * @example confidenceIntervalOfMean([1, 2, 3]).upper // 4.48413771175033, 2 + 4.302652729749464 / sqrt(3)
 */
export function confidenceIntervalOfMean(values: Recorded, level = 0.95): IntervalOfMean {
  if (!(level > 0 && level < 1)) {
    throw new RangeError(`confidenceIntervalOfMean requires a level between 0 and 1, not ${level}`);
  }
  const { numbers, missing } = present(values, 'a confidence interval of a mean');
  const n = numbers.length;
  if (n < 2) {
    const found = n === 0 ? 'none is' : '1 is';
    const reason = `a confidence interval of a mean needs at least two values, and ${found} present`;
    return { lower: null, upper: null, reason, n, missing };
  }
  const centre = meanOf(numbers);
  const reach = tUpperQuantile((1 - level) / 2, n - 1) * standardErrorOf(numbers);
  return { lower: centre - reach, upper: centre + reach, n, missing };
}
