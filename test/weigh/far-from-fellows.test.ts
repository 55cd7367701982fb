import { expect, test } from 'vitest';
import { usualRange } from '../../src/weigh/far-from-fellows.ts';

test('The usual range is four spreads about the median, the spread 1.4826 times the median absolute deviation', () => {
  // By hand: median 140, deviations 20, 10, 0, 10, 20 with median 10.
  const range = usualRange([120, 130, 140, 150, 160]);
  expect(range?.median).toBe(140);
  expect(range?.lower).toBeCloseTo(140 - 4 * 14.826, 10);
  expect(range?.upper).toBeCloseTo(140 + 4 * 14.826, 10);
  expect(range?.n).toBe(5);
});

test('One mistyped fellow hardly moves it', () => {
  const range = usualRange([120, 130, 140, 150, 1600]);
  expect(range?.median).toBe(140);
  expect(range!.upper).toBeLessThan(210);
});

test('Fewer than five fellows tell nothing, and like ones do not make the next one strange', () => {
  expect(usualRange([120, 130, 140, 150])).toBeNull();
  expect(usualRange([140, 140, 140, 140, 140])).toMatchObject({ lower: 112, upper: 168 });
});
