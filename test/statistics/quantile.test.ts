import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fiveNumberSummary } from '../../src/statistics/five-number-summary.ts';
import { median, medianOf } from '../../src/statistics/median.ts';
import { quantile, quantileOfSorted, sorted } from '../../src/statistics/quantile.ts';
import { expectClose } from '../support/close.ts';
import { numbersFromR } from '../support/r.ts';

test('quartiles are those of type 7, missing values counted', () => {
  expect(quantile([4, 1, null, 3, 2], 0.25)).toEqual({ value: 1.75, n: 4, missing: 1 });
  expect(median([3, null, 1, 2, 10])).toEqual({ value: 2.5, n: 4, missing: 1 });
  expect(fiveNumberSummary([4, 1, null, 3, 2])).toEqual({
    n: 4,
    missing: 1,
    minimum: 1,
    lowerQuartile: 1.75,
    median: 2.5,
    upperQuartile: 3.25,
    maximum: 4,
  });
});

test('quantiles of untidy data agree with R, ties and all', async () => {
  const weights = [12.1, 9.7, 12.1, 30.4, 9.7, 9.7, 15.55, 0, 18.25];
  const chances = [0, 0.05, 0.1, 1 / 3, 0.5, 0.77, 0.975, 1];
  const expected = await numbersFromR('unname(quantile(x, p))', { x: weights, p: chances });
  chances.forEach((p, index) => {
    expectClose(quantile(weights, p).value, expected[index]!, 1e-14);
  });
});

test('numbers are sorted as numbers, and the data given are left as they were', () => {
  const given = [10, 9, 100];
  expect(medianOf(given)).toBe(10);
  expect(given).toEqual([10, 9, 100]);
});

test('nothing present is no quantile; one value, or equal values, are every quantile', () => {
  expect(quantile([null], 0.5).value).toBeNull();
  expect(median([]).value).toBeNull();
  expect(fiveNumberSummary([null]).lowerQuartile).toBeNull();
  expect(quantile([5], 0.9).value).toBe(5);
  expect(fiveNumberSummary([0.1, 0.1, 0.1]).upperQuartile).toBe(0.1);
  expect(() => quantile([1], 1.2)).toThrow('not 1.2');
  expect(() => quantileOfSorted([], 0.5)).toThrow('at least one value');
});

test('a quantile lies between minimum and maximum and rises with its fraction', () => {
  const value = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 });
  const fraction = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(fc.array(value, { minLength: 1 }), fraction, fraction, (values, p, q) => {
      const ascending = sorted(values);
      const [low, high] = [
        quantileOfSorted(ascending, Math.min(p, q)),
        quantileOfSorted(ascending, Math.max(p, q)),
      ];
      expect(low).toBeLessThanOrEqual(high);
      expect(low).toBeGreaterThanOrEqual(ascending[0]!);
      expect(high).toBeLessThanOrEqual(ascending.at(-1)!);
    }),
  );
});
