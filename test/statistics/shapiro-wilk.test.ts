import { expect, test } from 'vitest';
import { normalUpperQuantile } from '../../src/statistics/distributions/normal.ts';
import { meanOf } from '../../src/statistics/mean.ts';
import { shapiroWilk } from '../../src/statistics/shapiro-wilk.ts';
import { plantGrowth } from '../published/plant-growth/plant-growth.ts';
import { expectClose, expectWithin } from '../support/close.ts';
import { namedNumbersFromR } from '../support/r.ts';

test('residuals of plant weights: W 0.966068, p 0.4379', () => {
  // R 4.2.2, shapiro.test(residuals(lm(weight ~ group, PlantGrowth))).
  const residuals = Object.values(plantGrowth).flatMap((group) => {
    const mean = meanOf(group);
    return group.map((weight) => weight - mean);
  });
  const result = shapiroWilk(residuals);
  expectWithin(result.w, 0.9660681188741848, 1e-10);
  expectClose(result.p, 0.4378985955062096, 1e-7);
});

/** Values of one shape or another, spread by a fixed rule so that each run meets the same ones. */
const shapes: Record<string, (u: number, index: number) => number> = {
  even: (u) => u,
  normal: (u) => 120 + 15 * normalUpperQuantile(u),
  skew: (u) => -Math.log(u),
  tied: (u) => Math.round(u * 6),
  'with one far out': (u, index) => (index === 1 ? 400 : u),
};

test.each(Object.keys(shapes))(
  'W is within 1e-8 of that of R, p with it, from 3 to 5000 values: %s',
  async (shape) => {
    for (const n of [3, 4, 5, 6, 7, 11, 12, 13, 20, 50, 333, 5000]) {
      const values = Array.from({ length: n }, (_, index) =>
        shapes[shape]!(((index * 0.618034) % 1) * 0.98 + 0.01, index),
      );
      const expected = await namedNumbersFromR(
        's <- shapiro.test(x); list(w = unname(s$statistic), p = s$p.value)',
        {
          x: values,
        },
      );
      const result = shapiroWilk(values);
      expectWithin(result.w, expected.w!, 1e-10, `${shape} ${n}`);
      // The p of W near 1 magnifies rounding in W, so it is held to 1e-7 rather than 1e-8.
      expectClose(result.p, expected.p!, 1e-7, `p of ${shape} ${n}`);
    }
  },
);

test('unordered values and a missing one', () => {
  const result = shapiroWilk([3, null, 1, 7, 2]);
  expect(result).toMatchObject({ n: 4, missing: 1 });
  expect(result.w).toBe(shapiroWilk([1, 2, 3, 7]).w);
});

test('too few, too many or equal values give null with the reason', () => {
  expect(shapiroWilk([1, 2])).toEqual({
    w: null,
    p: null,
    reason: 'the test of normality needs 3 to 5000 values, and 2 are present',
    n: 2,
    missing: 0,
  });
  expect(shapiroWilk(Array.from({ length: 5001 }, (_, index) => index)).w).toBeNull();
  expect(shapiroWilk([0.1 + 0.2, 0.3, 0.3, 0.3])).toMatchObject({ w: null, reason: 'all values are equal' });
});
