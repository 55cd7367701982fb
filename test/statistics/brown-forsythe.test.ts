import { expect, test } from 'vitest';
import { brownForsythe } from '../../src/statistics/brown-forsythe.ts';
import { plantGrowth } from '../published/plant-growth/plant-growth.ts';
import { expectClose } from '../support/close.ts';
import { namedNumbersFromR } from '../support/r.ts';

test('plant weights: the published test with medians', () => {
  // Levene's test centred on medians, R 4.2.2.
  const result = brownForsythe(Object.values(plantGrowth));
  expectClose(result.f, 1.11918569487039, 1e-12);
  expectClose(result.p, 0.3412266241254738, 1e-11);
  expect(result).toMatchObject({ df1: 2, df2: 27 });
});

test('unequal groups with ties and a missing value agree with R', async () => {
  const groups = [
    [1, 2, 2, 9, null],
    [3, 3.5],
    [10, 4, 4, 4, 18, 6],
  ];
  const kept = groups.map((group) => group.filter((value) => value !== null));
  const expected = await namedNumbersFromR(
    'd <- abs(y - ave(y, g, FUN = median)); a <- anova(lm(d ~ factor(g))); list(f = a$F[1], p = a$"Pr(>F)"[1])',
    { y: kept.flat(), g: kept.flatMap((group, index) => group.map(() => index)) },
  );
  const result = brownForsythe(groups);
  expectClose(result.f, expected.f!, 1e-12);
  expectClose(result.p, expected.p!, 1e-11);
  expect(result).toMatchObject({ df1: 2, df2: 9 });
});

test('zero variance, groups of one, groups of two and a single group give null with the reason', () => {
  const spread =
    'distances from the median do not differ within the groups, so there is no error to judge by';
  expect(
    brownForsythe([
      [5, 5, 5],
      [7, 7, 7],
    ]),
  ).toEqual({ f: null, df1: null, df2: null, p: null, reason: spread });
  expect(
    brownForsythe([
      [1, 2],
      [3, 9],
    ]),
  ).toMatchObject({ f: null, reason: spread });
  expect(
    brownForsythe([
      [0.1, 0.3],
      [0.2, 0.7],
    ]),
  ).toMatchObject({ f: null, reason: spread });
  expect(brownForsythe([[1, 2, 3], [4]])).toMatchObject({
    f: null,
    reason: expect.stringContaining('single value') as string,
  });
  expect(brownForsythe([[1, 2, 3], [null]])).toMatchObject({
    f: null,
    reason: expect.stringContaining('two groups') as string,
  });
});
