import { expect, test } from 'vitest';
import { friedman } from '../../src/statistics/friedman.ts';
import { kruskalWallis } from '../../src/statistics/kruskal-wallis.ts';
import { ranks } from '../../src/statistics/ranks.ts';
import { plantGrowth } from '../published/plant-growth/plant-growth.ts';
import { expectClose } from '../support/close.ts';
import { namedNumbersFromR } from '../support/r.ts';

test('ties share the mean of their ranks', () => {
  expect(ranks([10, 20, 20, 5])).toEqual({ ranks: [2, 3.5, 3.5, 1], ties: [2] });
  expect(ranks([])).toEqual({ ranks: [], ties: [] });
});

test('Kruskal-Wallis: plant weights as published, H 7.988 on 2', () => {
  // R 4.2.2, kruskal.test(weight ~ group, PlantGrowth).
  const result = kruskalWallis(Object.values(plantGrowth));
  expectClose(result.statistic, 7.988228749443715, 1e-12);
  expectClose(result.p, 0.01842375573147197, 1e-11);
});

test('Kruskal-Wallis: unequal groups of tied scores with one missing agree with R', async () => {
  const groups = [
    [1, 2, 2, 3],
    [3, 3, 4, 5, null, 2],
    [5, 5],
  ];
  const kept = groups.map((group) => group.filter((value) => value !== null));
  const expected = await namedNumbersFromR(
    'k <- kruskal.test(y, factor(g)); list(h = unname(k$statistic), p = k$p.value, df = unname(k$parameter))',
    { y: kept.flat(), g: kept.flatMap((group, index) => group.map(() => index)) },
  );
  const result = kruskalWallis(groups);
  expectClose(result.statistic, expected.h!, 1e-12);
  expectClose(result.p, expected.p!, 1e-11);
  expect(result).toMatchObject({ df: expected.df, n: 11, missing: 1 });
});

test('Friedman: tied scores in unordered blocks agree with R, a block with a missing score left out whole', async () => {
  const blocks = [
    [3, 4, 4, 5],
    [2, 2, 4, 3],
    [1, 3, 3, 3],
    [2, 4, 5, 4],
    [4, 1, 5, 2],
  ];
  const expected = await namedNumbersFromR(
    'f <- friedman.test(matrix(y, ncol = 4, byrow = TRUE)); list(q = unname(f$statistic), p = f$p.value)',
    { y: blocks.flat() },
  );
  const result = friedman([...blocks, [1, null, 2, 3]]);
  expectClose(result.statistic, expected.q!, 1e-12);
  expectClose(result.p, expected.p!, 1e-11);
  expect(result).toMatchObject({ df: 3, n: 20, missing: 1 });
});

test('Friedman: without ties it is the textbook formula', () => {
  // Rank totals 3, 6, 9 of three blocks: 12 / (3 x 3 x 4) x (9 + 36 + 81) - 3 x 3 x 4 = 6.
  expect(
    friedman([
      [1, 2, 3],
      [4, 5, 9],
      [0, 1, 8],
    ]).statistic,
  ).toBe(6);
});

test('equal values and too few groups or blocks give null with the reason', () => {
  expect(
    kruskalWallis([
      [2, 2],
      [2, 2, 2],
    ]),
  ).toMatchObject({ p: null, reason: 'all values are equal, so ranks show nothing' });
  expect(kruskalWallis([[1, 2], [null]]).statistic).toBeNull();
  expect(
    friedman([
      [2, 2],
      [3, 3],
    ]),
  ).toMatchObject({ p: null, reason: expect.stringContaining('equal') as string });
  expect(
    friedman([
      [1, 2],
      [null, 3],
    ]),
  ).toMatchObject({ p: null, n: 2, missing: 1 });
  expect(() => friedman([[1, 2], [3]])).toThrow('same two or more treatments');
});
