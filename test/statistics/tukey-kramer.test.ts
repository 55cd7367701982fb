import { describe, expect, test } from 'vitest';
import { tukeyKramer, tukeyKramerOf } from '../../src/statistics/tukey-kramer.ts';
import { expectClose } from '../support/close.ts';
import { numbersFromR } from '../support/r.ts';

describe('Tukey and Kramer', () => {
  test("PlantGrowth's trt1 less ctrl: p 0.390871, limits -1.06222 and 0.32022 (accurate quadrature)", () => {
    const found = tukeyKramer(-0.37100000000000044, 0.27878160840554955, 27, 3);
    expectClose(found.p, 0.39087114420210683, 1e-9);
    expectClose(found.lower, -1.0622160514028631, 1e-9);
    expectClose(found.upper, 0.32021605140286225, 1e-9);
  });

  test('groups of unequal size are those of TukeyHSD, to the digits that R carries', async () => {
    const y = [11, 14, 12, 19, 17, 22, 20, 21, 15, 13];
    const g = ['a', 'a', 'a', 'b', 'b', 'b', 'b', 'b', 'c', 'c'];
    const [difference, lower, upper, p, error, df] = await numbersFromR(
      'f <- aov(y ~ g); unname(c(TukeyHSD(f)$g[1, ], sqrt(deviance(f) / df.residual(f) * (1 / 3 + 1 / 5)), df.residual(f)))',
      { y, g },
    );
    const found = tukeyKramer(difference!, error!, df!, 3);
    expectClose(found.lower, lower!, 1e-4);
    expectClose(found.upper, upper!, 1e-4);
    expect(Math.abs(found.p - p!)).toBeLessThan(1e-6);
  });

  test('the sign of a difference turns its limits and leaves its p', () => {
    const [one, two] = [tukeyKramer(3, 1.5, 8.4, 4), tukeyKramer(-3, 1.5, 8.4, 4)];
    expect(two.p).toBe(one.p);
    expectClose(two.lower, -one.upper, 1e-14);
  });

  test('no difference at all has a p of 1', () => {
    expect(tukeyKramer(0, 2, 6, 3).p).toBe(1);
  });

  test('pairs of one family are each as by itself, also where their degrees of freedom differ', () => {
    const ofFour = tukeyKramerOf(4);
    for (const [difference, error, df] of [
      [3, 1.5, 8.4],
      [-1, 1.5, 8.4],
      [3, 1.2, 11],
      [3, 1.5, 8.4],
    ] as const) {
      expect(ofFour(difference, error, df)).toEqual(tukeyKramer(difference, error, df, 4));
    }
  });
});
