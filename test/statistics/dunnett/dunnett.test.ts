import gammaln from '@stdlib/math-base-special-gammaln';
import { expect, test } from 'vitest';
import {
  correlationOf,
  correlationsWithControl,
  productFactors,
} from '../../../src/statistics/dunnett/correlation.ts';
import { dunnett } from '../../../src/statistics/dunnett/dunnett.ts';
import { normalUpperTail } from '../../../src/statistics/distributions/normal.ts';
import { tTwoSided } from '../../../src/statistics/distributions/student-t.ts';
import { expectClose, expectWithin } from '../../support/close.ts';
import { integrate } from '../../support/gauss-legendre.ts';
import { largestByIteratedQuadrature } from '../../support/largest-by-iterated-quadrature.ts';
import { numberFromR } from '../../support/r.ts';

const equal = (comparisons: number) => correlationsWithControl(1, new Array<number>(comparisons).fill(1));

test('critical values for equal replication are those of the published tables', () => {
  // Dunnett (1964), New tables for multiple comparisons with a control, Biometrics 20, 482-491, two-sided 5 %,
  // 1 to 9 comparisons; digits as printed, from memory, and checked against R below.
  const printed: [number, number[]][] = [
    [5, [2.57, 3.03, 3.29, 3.48, 3.62, 3.73, 3.82, 3.9, 3.97]],
    [10, [2.23, 2.57, 2.76, 2.89, 2.99, 3.07, 3.14, 3.19, 3.24]],
    [20, [2.09, 2.38, 2.54, 2.65, 2.73, 2.8, 2.86, 2.9, 2.95]],
    [60, [2.0, 2.27, 2.41, 2.51, 2.58, 2.64, 2.69, 2.73, 2.77]],
    [Infinity, [1.96, 2.21, 2.35, 2.44, 2.51, 2.57, 2.61, 2.65, 2.69]],
  ];
  for (const [df, row] of printed) {
    row.forEach((value, index) => {
      const critical = dunnett(equal(index + 1)).criticalValue(0.05, df);
      expectWithin(critical, value, 0.00501, `${index + 1} comparisons, ${df} degrees of freedom`);
    });
  }
});

/** The adjusted p in R: the trapezoidal rule over the shared part, R's own integration over the standard deviation. */
const inR = `
z <- seq(-9, 9, by = 0.05)
weight <- dnorm(z) * 0.05
one <- function(c) sum(weight * Reduce("*", lapply(b, function(b)
  pnorm((c - b * z) / sqrt(1 - b^2)) - pnorm((-c - b * z) / sqrt(1 - b^2)))))
if (is.infinite(df)) 1 - one(t) else
  1 - integrate(function(s) sapply(s, function(s) one(t * s)) * 2 * s * df * dchisq(s^2 * df, df),
    0, Inf, rel.tol = 1e-9, subdivisions = 500)$value`;

test('unequal replication, fractional and infinite degrees of freedom agree with integration in R', async () => {
  const cases = [
    { control: 1 / 6, others: [1 / 4, 1 / 3, 1 / 5], t: 2.3, df: 9.4 },
    { control: 1 / 3, others: [1 / 9, 1 / 9, 1 / 2, 1 / 4, 1 / 7], t: 2.9, df: 4.5 },
    { control: 1, others: [1, 1, 1, 1], t: 3.6, df: 33.3 },
    { control: 0.2, others: [1, 0.5, 0.1, 0.05], t: 1.7, df: Infinity },
    { control: 1, others: [0.1, 0.2], t: 1.4, df: Infinity },
  ];
  for (const { control, others, t, df } of cases) {
    const distribution = dunnett(correlationsWithControl(control, others));
    expect(distribution).toMatchObject({ method: 'quadrature', seed: null });
    const b = others.map((own) => Math.sqrt(control / (control + own)));
    const expected = await numberFromR(inR, { b, t, df });
    expectWithin(distribution.upperTail(t, df), expected, 1e-8, `t ${t} df ${df}`);
    expect(distribution.upperTail(-t, df)).toBe(distribution.upperTail(t, df));
    expectClose(distribution.criticalValue(distribution.upperTail(t, df), df), t, 1e-9);
  }
});

test("one comparison is Student's t, to 1e-10 relative in its far tail", () => {
  for (const [t, df] of [
    [0.3, 1],
    [2.2, 7.7],
    [15, 30],
    [40, 12],
    [8, Infinity],
  ] as const) {
    expectClose(dunnett([[1]]).upperTail(t, df), tTwoSided(t, df), 1e-10);
  }
});

test('uncorrelated comparisons are independent, and one repeated with its sign changed counts once', () => {
  const alone = 2 * normalUpperTail(2.1);
  const independent = dunnett([
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ]).upperTail(2.1, Infinity);
  expectClose(independent, 1 - (1 - alone) ** 3, 1e-11);
  const twice = dunnett([
    [1, 0.4, -1],
    [0.4, 1, -0.4],
    [-1, -0.4, 1],
  ]);
  expect(twice.upperTail(2, 9)).toBe(
    dunnett([
      [1, 0.4],
      [0.4, 1],
    ]).upperTail(2, 9),
  );
});

test('in the far tail p is the sum over comparisons', () => {
  expectClose(dunnett(equal(4)).upperTail(20, Infinity), 8 * normalUpperTail(20), 1e-10);
});

const noProduct = [
  [1, 0.9, 0.1],
  [0.9, 1, 0.5],
  [0.1, 0.5, 1],
];
const noProductOfFour = [
  [1, 0.62, 0.41, 0.3],
  [0.62, 1, 0.45, 0.55],
  [0.41, 0.45, 1, 0.7],
  [0.3, 0.55, 0.7, 1],
];

test('correlations of no product form agree with quadrature over all comparisons but the last, within 1e-6', () => {
  expect(productFactors(noProduct)).toBeNull();
  for (const [r, c] of [
    [noProduct, 1.2],
    [noProduct, 2.2],
    [noProduct, 3.1],
    [noProductOfFour, 2.4],
  ] as const) {
    const distribution = dunnett(r);
    expect(distribution).toMatchObject({ method: 'lattice', seed: null });
    const expected = largestByIteratedQuadrature(r, c);
    expectWithin(distribution.upperTail(c, Infinity), expected, 1e-6, `c ${c}`);
  }
  // Finite degrees of freedom: the same averaged over the chi density.
  const df = 7.5;
  const density = (s: number) =>
    2 * Math.exp((df / 2) * Math.log(df / 2) - gammaln(df / 2) + (df - 1) * Math.log(s) - (df * s * s) / 2);
  const average = integrate(
    (s) => density(s) * largestByIteratedQuadrature(noProduct, 2.5 * s),
    1e-9,
    3.2,
    3,
  );
  expectWithin(dunnett(noProduct).upperTail(2.5, df), average, 1e-6);
});

/** Four differences between four independent means in a ring: three of them fix the fourth. */
const singular = [
  [1, 0.5, 0.5, 0],
  [0.5, 1, 0, 0.5],
  [0.5, 0, 1, 0.5],
  [0, 0.5, 0.5, 1],
];

/** Thirteen comparisons in two groups, more alike within each than a product allows. */
const many = Array.from({ length: 13 }, (_, i) =>
  Array.from({ length: 13 }, (__, j) => (i === j ? 1 : i % 2 === j % 2 ? 0.6 : 0.3)),
);

test('singular correlations and more than twelve comparisons are computed over directions, with a seed', () => {
  for (const [r, t] of [
    [singular, 2.4],
    [many, 2.7],
  ] as const) {
    const distribution = dunnett(r);
    expect(distribution).toMatchObject({ method: 'directions', seed: 1955 });
    const p = distribution.upperTail(t, 12);
    expect(dunnett(r).upperTail(t, 12)).toBe(p);
    const others = [1, 2, 3].map((seed) => dunnett(r, seed).upperTail(t, 12));
    for (const other of others) expectClose(other, p, 0.006);
    expect(new Set(others).size).toBeGreaterThan(1);
  }
  // A touch less than singular, and 12 of the 13, on the lattice: nearly the same.
  const nearly = singular.map((row, i) => row.map((value, j) => (i === j ? 1 : 0.995 * value)));
  expect(dunnett(nearly).method).toBe('lattice');
  expectClose(dunnett(nearly).upperTail(2.4, 12), dunnett(singular).upperTail(2.4, 12), 0.005);
  const twelve = many.slice(1).map((row) => row.slice(1));
  expect(dunnett(twelve).method).toBe('lattice');
  expectClose(dunnett(twelve).upperTail(4, 12), (12 / 13) * dunnett(many).upperTail(4, 12), 0.03);
});

test('chances stay between one comparison alone and the sum over all, far out too', () => {
  for (const [r, count] of [
    [noProduct, 3],
    [noProductOfFour, 4],
    [singular, 4],
    [many, 13],
  ] as const) {
    for (const t of [0.5, 2, 4, 5.9, 6.1, 7.9, 8.1, 9]) {
      const p = dunnett(r).upperTail(t, Infinity);
      expect(p).toBeGreaterThanOrEqual(2 * normalUpperTail(t) * (1 - 1e-9));
      expect(p).toBeLessThanOrEqual(Math.min(1, 2 * count * normalUpperTail(t)) * (1 + 1e-9));
    }
  }
});

test('correlations come from covariances and from variances of means', () => {
  expect(
    correlationOf([
      [4, 2],
      [2, 9],
    ]),
  ).toEqual([
    [1, 1 / 3],
    [1 / 3, 1],
  ]);
  expectClose(correlationsWithControl(1, [1, 1])[0]![1], 0.5, 1e-15);
  expect(
    productFactors([
      [1, 0],
      [0, 1],
    ]),
  ).toEqual([0, 0]);
  const factors = productFactors(correlationsWithControl(0.5, [0.25, 1, 0.125]))!;
  expectClose(factors[1]! ** 2, 1 / 3, 1e-12);
  expect(() => correlationOf([[0]])).toThrow('not 0');
});

test('55 comparisons of unequal replication are quick', () => {
  const others = Array.from({ length: 55 }, (_, index) => 1 / (2 + (index % 4)));
  const from = performance.now();
  const distribution = dunnett(correlationsWithControl(1 / 4, others));
  const p = others.map((_, index) => distribution.upperTail(0.1 * index, 168));
  distribution.criticalValue(0.05, 168);
  expect(performance.now() - from).toBeLessThan(3000);
  expect(p.every((value, index) => index === 0 || value <= p[index - 1]! + 1e-12)).toBe(true);
});

test('what is no correlation, and what lies outside the domain, throws with the value refused', () => {
  expect(() => dunnett([])).toThrow('at least one');
  expect(() =>
    dunnett([
      [1, 0.5],
      [0.4, 1],
    ]),
  ).toThrow('not 0.5');
  expect(() => dunnett([[2]])).toThrow('not 2');
  expect(() => dunnett([[1]]).upperTail(NaN, 4)).toThrow('not NaN');
  expect(() => dunnett([[1]]).upperTail(1, 0)).toThrow('not 0');
  expect(dunnett([[1]]).upperTail(0, 4)).toBe(1);
  expect(dunnett([[1]]).upperTail(Infinity, 4)).toBe(0);
});
