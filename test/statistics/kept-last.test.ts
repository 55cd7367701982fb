import { expect, it } from 'vitest';
import { keptLast } from '../../src/statistics/kept-last.ts';

it('makes a result once for inputs that are alike, and again once others have taken its place', () => {
  const made: number[][] = [];
  const totalOf = keptLast(2, (values: readonly number[]) => {
    made.push([...values]);
    return { total: values.reduce((sum, value) => sum + value, 0) };
  });
  const first = totalOf([1, 2]);
  expect(first).toEqual({ total: 3 });
  expect(totalOf([1, 2])).toBe(first);
  expect(totalOf([2, 1])).not.toBe(first);
  expect(made).toEqual([[1, 2], [2, 1]]); // prettier-ignore
  totalOf([5]);
  expect(totalOf([1, 2])).toEqual(first);
  expect(made).toEqual([[1, 2], [2, 1], [5], [1, 2]]); // prettier-ignore
});
