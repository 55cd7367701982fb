import { expect, test } from 'vitest';
import { rootBetween } from '../../src/statistics/root-between.ts';
import { expectClose } from '../support/close.ts';

test('roots are found to the tolerance asked for', () => {
  expectClose(
    rootBetween((x) => x * x - 2, 0, 2, 1e-15),
    Math.SQRT2,
    1e-15,
  );
  expectClose(
    rootBetween((x) => Math.cos(x), 1, 2, 1e-15),
    Math.PI / 2,
    1e-15,
  );
  expectClose(
    rootBetween((x) => (x - 1) ** 9, 0, 2.5, 1e-12),
    1,
    1e-3,
  );
});

test('a root at an end is returned; like signs throw', () => {
  expect(rootBetween((x) => x, 0, 1, 1e-12)).toBe(0);
  expect(() => rootBetween((x) => x + 1, 0, 1, 1e-12)).toThrow('between 0 and 1');
});
