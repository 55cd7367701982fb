import { expect, test } from 'vitest';
import { mean, meanOf } from '../../src/statistics/mean.ts';

test('the mean leaves out and counts what is missing', () => {
  expect(mean([2, null, 4])).toEqual({ value: 3, n: 2, missing: 1 });
  expect(meanOf([2, 4, 9])).toBe(5);
});

test('nothing present is no mean, with the reason', () => {
  expect(mean([null, null])).toEqual({
    value: null,
    reason: 'a mean needs at least one value, and none is present',
    n: 0,
    missing: 2,
  });
  expect(() => meanOf([])).toThrow('meanOf requires at least one value');
});

test('the mean of equal values is that value exactly', () => {
  expect(meanOf(Array.from({ length: 7 }, () => 0.1))).toBe(0.1);
});

test('NaN and infinities are refused by name', () => {
  expect(() => mean([1, NaN])).toThrow('not NaN');
  expect(() => mean([1, Infinity])).toThrow('not Infinity');
});
