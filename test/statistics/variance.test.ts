import { expect, test } from 'vitest';
import { coefficientOfVariation } from '../../src/statistics/coefficient-of-variation.ts';
import { standardDeviation } from '../../src/statistics/standard-deviation.ts';
import { standardError } from '../../src/statistics/standard-error.ts';
import { sumOfSquares } from '../../src/statistics/sum-of-squares.ts';
import { variance, varianceOf } from '../../src/statistics/variance.ts';
import { expectClose } from '../support/close.ts';
import { numberFromR } from '../support/r.ts';

test('the variance divides by one less than the number present', () => {
  expect(variance([1, 2, null, 3])).toEqual({ value: 1, n: 3, missing: 1 });
  expect(sumOfSquares([1, 2, 3])).toBe(2);
});

test('a large offset takes nothing from the variance', () => {
  expect(varianceOf([1e9 + 4, 1e9 + 7, 1e9 + 13, 1e9 + 16])).toBe(30);
});

test('the standard deviation, standard error and coefficient of variation follow from it', () => {
  expect(standardDeviation([1, 2, 3])).toEqual({ value: 1, n: 3, missing: 0 });
  expectClose(standardError([1, 3, null, 5, 7]).value, 1.2909944487358056, 1e-15);
  expect(coefficientOfVariation([1, 2, 3])).toEqual({ value: 50, n: 3, missing: 0 });
});

test('equal values have zero variance, exactly', () => {
  const tied = [0.1, 0.1, 0.1, 0.1, 0.1];
  expect(variance(tied).value).toBe(0);
  expect(standardDeviation(tied).value).toBe(0);
  expect(standardError(tied).value).toBe(0);
  expect(coefficientOfVariation(tied).value).toBe(0);
});

test('one value has no variance, with the reason', () => {
  const reason = 'a variance needs at least two values, and 1 is present';
  expect(variance([null, 3])).toEqual({ value: null, reason, n: 1, missing: 1 });
  expect(standardDeviation([3]).value).toBeNull();
  expect(standardError([]).value).toBeNull();
  expect(coefficientOfVariation([3]).value).toBeNull();
  expect(() => varianceOf([3])).toThrow('at least two values, not 1');
});

test('a coefficient of variation needs a mean above zero', () => {
  expect(coefficientOfVariation([-1, 1])).toEqual({
    value: null,
    reason: 'a coefficient of variation needs a mean above zero, and it is 0',
    n: 2,
    missing: 0,
  });
});

test('the variance agrees with R', async () => {
  const weights = [141.3, 98.25, 120.7, 155.01, 98.25, 133.9, 87.66];
  expectClose(varianceOf(weights), await numberFromR('var(x)', { x: weights }), 1e-14);
});
