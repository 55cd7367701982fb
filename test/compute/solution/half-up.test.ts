import { expect, test } from 'vitest';
import { halfUp } from '../../../src/compute/solution/half-up.ts';

test('halves round upwards as on paper, whatever their binary neighbour', () => {
  expect((122.55).toFixed(1)).toBe('122.5');
  expect(halfUp(122.55, 1)).toBe(122.6);
  expect(halfUp(10 * 0.645 * 19, 1)).toBe(122.6);
  expect(halfUp(1.005, 2)).toBe(1.01);
  expect(halfUp(122.54, 1)).toBe(122.5);
  expect(halfUp(0, 1)).toBe(0);
});
