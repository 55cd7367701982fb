import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sum } from '../../src/statistics/sum.ts';

test('what a large term swallows is added back', () => {
  expect(sum([1, 1e100, 1, -1e100])).toBe(2);
  expect(sum(Array.from({ length: 10 }, () => 0.1))).toBe(1);
  expect(sum(Float64Array.of(1e16, 1, 1))).toBe(1e16 + 2);
});

test('no values sum to 0, ties and negatives cancel exactly', () => {
  expect(sum([])).toBe(0);
  expect(sum([0.3, 0.3, -0.3, -0.3])).toBe(0);
});

test('sums of thousandths agree with exact integer arithmetic to one rounding', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -1e9, max: 1e9 }), { maxLength: 200 }), (thousandths) => {
      const exact = thousandths.reduce((total, value) => total + value, 0);
      // Each decimal is itself rounded once to a double, which bounds what the sum may differ by.
      const bound = thousandths.reduce((total, value) => total + Math.abs(value), 0) * 2e-16 + 1e-300;
      expect(Math.abs(sum(thousandths.map((value) => value / 1000)) * 1000 - exact)).toBeLessThanOrEqual(
        bound * 2,
      );
    }),
  );
});
