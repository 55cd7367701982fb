import { expect, test } from 'vitest';
import { confidenceIntervalOfMean } from '../../src/statistics/confidence-interval-of-mean.ts';
import { expectClose } from '../support/close.ts';
import { numbersFromR } from '../support/r.ts';

test('limits agree with R, a missing value left out', async () => {
  const weights = [4.17, 5.58, 5.18, 6.11, 4.5, 4.61, 5.17, 4.53, 5.33, 5.14];
  const interval = confidenceIntervalOfMean([...weights, null]);
  const [lower, upper] = await numbersFromR('as.numeric(t.test(x)$conf.int)', { x: weights });
  expectClose(interval.lower, lower!, 1e-13);
  expectClose(interval.upper, upper!, 1e-13);
  expect(interval).toMatchObject({ n: 10, missing: 1 });
});

test('three values reach out by t on 2 degrees of freedom, which has a closed form', () => {
  const exactT = 0.95 / Math.sqrt(2 * 0.025 * 0.975);
  expectClose(confidenceIntervalOfMean([1, 2, 3]).upper, 2 + exactT / Math.sqrt(3), 1e-13);
});

test('equal values give an interval of no width; one value gives none, with the reason', () => {
  expect(confidenceIntervalOfMean([7, 7, 7])).toEqual({ lower: 7, upper: 7, n: 3, missing: 0 });
  expect(confidenceIntervalOfMean([7, null])).toEqual({
    lower: null,
    upper: null,
    reason: 'a confidence interval of a mean needs at least two values, and 1 is present',
    n: 1,
    missing: 1,
  });
  expect(() => confidenceIntervalOfMean([1, 2], 95)).toThrow('not 95');
});
