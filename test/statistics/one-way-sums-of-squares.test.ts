import { expect, test } from 'vitest';
import { oneWaySumsOfSquares } from '../../src/statistics/one-way-sums-of-squares.ts';
import { plantGrowth } from '../published/plant-growth/plant-growth.ts';
import { expectClose } from '../support/close.ts';
import { namedNumbersFromR } from '../support/r.ts';

test('hand arithmetic: two groups of three', () => {
  const analysis = oneWaySumsOfSquares([
    [1, 2, 3],
    [3, 4, 5],
  ]);
  expect(analysis).toMatchObject({
    means: [2, 4],
    between: { df: 1, sumOfSquares: 6, meanSquare: 6 },
    within: { df: 4, sumOfSquares: 4, meanSquare: 1 },
    total: { df: 5, sumOfSquares: 10 },
    f: 6,
    reason: null,
  });
});

test('the published analysis of plant weights', () => {
  // R 4.2.2; published F 4.846 on 2 and 27, p 0.0159.
  const analysis = oneWaySumsOfSquares(Object.values(plantGrowth));
  expectClose(analysis.between.sumOfSquares, 3.7663399999999987, 1e-12);
  expectClose(analysis.within.sumOfSquares, 10.492089999999997, 1e-12);
  expectClose(analysis.f, 4.846087862380135, 1e-12);
  expectClose(analysis.p, 0.015909958325622937, 1e-11);
});

test('unequal groups, ties and values that are no decimals agree with R', async () => {
  const groups = [
    [1 / 3, 2, 2, Math.PI],
    [5, 7.25],
    [4.5, 4.5, 4.5, 6, Math.E],
  ];
  const analysis = oneWaySumsOfSquares(groups);
  const expected = await namedNumbersFromR(
    'a <- anova(lm(y ~ factor(g))); list(f = a$F[1], p = a$"Pr(>F)"[1], between = a$"Sum Sq"[1], within = a$"Sum Sq"[2])',
    { y: groups.flat(), g: groups.flatMap((group, index) => group.map(() => index)) },
  );
  expectClose(analysis.f, expected.f!, 1e-12);
  expectClose(analysis.p, expected.p!, 1e-11);
  expectClose(analysis.between.sumOfSquares, expected.between!, 1e-12);
  expectClose(analysis.within.sumOfSquares, expected.within!, 1e-12);
});

test('without differences inside the groups there is no F, rounding noise or none', () => {
  const reason = 'values within the groups do not differ, so there is no error to judge by';
  expect(
    oneWaySumsOfSquares([
      [7, 7],
      [7, 7, 7],
    ]),
  ).toMatchObject({ f: null, p: null, reason });
  expect(
    oneWaySumsOfSquares([
      [7, 7],
      [9, 9],
    ]),
  ).toMatchObject({ f: null, p: null, reason });
  const noisy = [0.1 + 0.2, 0.3, 0.7 - 0.4];
  expect(oneWaySumsOfSquares([noisy, [0.3, 0.3]])).toMatchObject({ f: null, p: null, reason });
});

test('single values leave no error; groups that are none throw', () => {
  expect(oneWaySumsOfSquares([[1], [2]]).reason).toMatch('single value');
  expect(() => oneWaySumsOfSquares([[1, 2]])).toThrow('not 1');
  expect(() => oneWaySumsOfSquares([[1, 2], []])).toThrow('at least one value');
});
