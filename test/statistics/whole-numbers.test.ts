import { expect, test } from 'vitest';
import { centred } from '../../src/statistics/centred.ts';
import { wholeNumbers } from '../../src/statistics/whole-numbers.ts';

test('decimals become whole numbers and the power of ten', () => {
  expect(wholeNumbers([1.2, 0.35])).toEqual({ whole: Float64Array.of(120, 35), scale: 100 });
  expect(wholeNumbers([-3, 4])).toEqual({ whole: Float64Array.of(-3, 4), scale: 1 });
  expect(wholeNumbers([0.123456789])?.scale).toBe(1e9);
});

test('numbers that are no decimals, or too large, are left alone', () => {
  expect(wholeNumbers([1, 1 / 3])).toBeNull();
  expect(wholeNumbers([0.1 + 0.2])).toBeNull();
  expect(wholeNumbers([2 ** 53, 0.1])).toBeNull();
});

test('centring leaves whole deviations for decimals, and small ones for other numbers', () => {
  expect(centred([1000000.1, 1000000.3, 1000000.2])).toEqual({
    deviations: Float64Array.of(-1, 1, 0),
    scale: 10,
  });
  const thirds = centred([1 / 3, 2 / 3]);
  expect(thirds.scale).toBe(1);
  expect(thirds.deviations[0]).toBeCloseTo(-1 / 6, 15);
  expect(centred([])).toEqual({ deviations: new Float64Array(0), scale: 1 });
});
