import erfc from '@stdlib/math-base-special-erfc';
import gammaln from '@stdlib/math-base-special-gammaln';
import fc from 'fast-check';
import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { tTwoSided } from '../../src/statistics/distributions/student-t.ts';
import {
  studentizedRangeUpperQuantile,
  studentizedRangeUpperTail,
} from '../../src/statistics/studentized-range.ts';
import { expectClose, expectWithin } from '../support/close.ts';
import { integrate } from '../support/gauss-legendre.ts';

interface CheckValues {
  upper_tail: { q: number; k: number; df: number | 'Infinity'; upper_exact: number }[];
  quantiles: { p: number; k: number; df: number | 'Infinity'; q_exact: number }[];
  one_degree_of_freedom: { q: number; k: number; df: number; upper_exact: number }[];
}

/** Worked values kept beside the project, not in it. */
const checkValues = new URL('../../../shared/check-values/studentized-range.json', import.meta.url);

/** Quadrature to 1e-13 checked against arbitrary-precision arithmetic: q, groups, df, upper tail. */
const typed: [number, number, number, number][] = [
  [3, 2, 1, 0.2804377980075435],
  [6, 2, 1, 0.14736306675894273],
  [3, 2, 2, 0.16794970566215633],
  [0.5, 20, 2, 0.9999999657275678],
  [3.5, 30, 2, 0.7276352780242646],
  [4, 3, 3, 0.1288213704796676],
  [6, 4, 4, 0.04374058056327327],
  [12, 5, 6, 0.0008774981204285453],
  [3, 10, 12, 0.5457399396190644],
  [6, 20, 27, 0.02324667932460053],
  [12, 30, 60, 3.0884839885007085e-9],
  [1, 3, Infinity, 0.7592873587706613],
];

test('upper tails are within 1e-10 of arbitrary-precision values, at 1 and 2 degrees of freedom too', () => {
  for (const [q, groups, df, exact] of typed) {
    expectWithin(studentizedRangeUpperTail(q, groups, df), exact, 1e-12, `${q} ${groups} ${df}`);
  }
});

test('quantiles are within 1e-8 relative of accurate ones', () => {
  // Quadrature to 1e-13, as above; the last is the 5 % point for three groups of ten (27 error degrees of freedom).
  const exact: [number, number, number, number][] = [
    [0.01, 2, 2, 14.03584785916503],
    [0.01, 8, 3, 15.641002732855865],
    [0.01, 8, 9, 7.13390347824759],
    [0.01, 2, 120, 3.7015924818522534],
    [0.05, 3, 27, 3.506426123354154],
  ];
  for (const [p, groups, df, q] of exact) {
    expectClose(studentizedRangeUpperQuantile(p, groups, df), q, 1e-9, `${p} ${groups} ${df}`);
  }
});

test.skipIf(!existsSync(checkValues))('all worked values kept beside the project are met', () => {
  const values = JSON.parse(readFileSync(checkValues, 'utf8')) as CheckValues;
  expect(values.upper_tail.length).toBeGreaterThan(100);
  for (const row of [...values.upper_tail, ...values.one_degree_of_freedom]) {
    const computed = studentizedRangeUpperTail(row.q, row.k, Number(row.df));
    expectWithin(computed, row.upper_exact, 1e-12, JSON.stringify(row));
  }
  for (const row of values.quantiles) {
    const computed = studentizedRangeUpperQuantile(1 - row.p, row.k, Number(row.df));
    expectClose(computed, row.q_exact, 1e-9, JSON.stringify(row));
  }
});

const phi = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
const below = (z: number) => erfc(-z / Math.SQRT2) / 2;

/** The upper tail by plain double quadrature of the textbook integrals, sharing nothing with the program's way. */
function byDoubleQuadrature(q: number, groups: number, df: number): number {
  const rangeAtMost = (w: number) =>
    groups * integrate((z) => phi(z) * (below(z) - below(z - w)) ** (groups - 1), -9, 9, 9);
  if (df === Infinity) return 1 - rangeAtMost(q);
  const logConstant = Math.LN2 + (df / 2) * Math.log(df / 2) - gammaln(df / 2);
  const density = (s: number) => Math.exp(logConstant + (df - 1) * Math.log(s) - (df * s * s) / 2);
  // s = v^4 takes the singular slope at 0 out of the density of a few degrees of freedom.
  const highest = Math.sqrt(1 + 9 / Math.sqrt(df) + 60 / df);
  const of = (v: number) => 4 * v ** 3 * density(v ** 4) * (1 - rangeAtMost(q * v ** 4));
  return integrate(of, 0, highest ** 0.25, 24);
}

test('upper tails agree with double quadrature of the textbook integrals, to 60 groups and fractional degrees', () => {
  const cases: [number, number, number][] = [
    [3.2, 3, 1],
    [9, 24, 1.5],
    [2.5, 7, 2.25],
    [5, 56, 7.3],
    [4.4, 60, 31.7],
    [3.9, 30, 168],
    [6.5, 60, 1000],
    [3.3, 4, 999.5],
    [5.2, 60, Infinity],
  ];
  for (const [q, groups, df] of cases) {
    const expected = byDoubleQuadrature(q, groups, df);
    expectWithin(studentizedRangeUpperTail(q, groups, df), expected, 1e-10, `${q} ${groups} ${df}`);
  }
});

test("with two groups it is Student's t, to 1e-10 relative down to 1e-250", () => {
  let smallest = 1;
  for (const df of [0.3, 1, 1.5, 2, 3, 5, 10, 33.3, 100, 1000, 1e5, 1e7, Infinity]) {
    for (const q of [1e-3, 0.1, 1, 2, 3, 5, 10, 20, 30, 45, 100, 1e4]) {
      const expected = tTwoSided(q / Math.SQRT2, df);
      if (expected < 1e-300) continue;
      smallest = Math.min(smallest, expected);
      expectClose(studentizedRangeUpperTail(q, 2, df), expected, 1e-10, `q ${q} df ${df}`);
    }
  }
  expect(smallest).toBeLessThan(1e-200);
});

test('three groups and more have Bonferroni over pairs as their far tail', () => {
  for (const groups of [3, 12, 60]) {
    const pairs = (groups * (groups - 1)) / 2;
    expectClose(
      studentizedRangeUpperTail(26, groups, Infinity),
      pairs * tTwoSided(26 / Math.SQRT2, Infinity),
      1e-10,
    );
  }
});

test('table entries as printed', () => {
  // Harter (1960), Tables of range and studentized range, 5 % and 1 % points; digits as printed, from memory.
  const printed: [number, number, number, number][] = [
    [0.05, 3, 10, 3.877],
    [0.05, 5, 20, 4.232],
    [0.01, 4, 12, 5.502],
    [0.05, 10, 60, 4.646],
    [0.05, 3, Infinity, 3.314],
  ];
  for (const [p, groups, df, q] of printed) {
    expectWithin(studentizedRangeUpperQuantile(p, groups, df), q, 0.00051, `${p} ${groups} ${df}`);
  }
});

test('the tail falls with q, rises with the number of groups, and its quantile inverts it', () => {
  const q = fc.double({ min: 0.01, max: 40, noNaN: true });
  const df = fc.double({ min: 0.5, max: 2000, noNaN: true });
  fc.assert(
    fc.property(q, fc.integer({ min: 2, max: 60 }), df, (at, groups, degrees) => {
      const tail = studentizedRangeUpperTail(at, groups, degrees);
      expect(tail).toBeGreaterThanOrEqual(0);
      expect(tail).toBeLessThanOrEqual(1);
      expect(studentizedRangeUpperTail(at * 1.01, groups, degrees)).toBeLessThanOrEqual(tail + 1e-13);
      expect(studentizedRangeUpperTail(at, groups + 1, degrees)).toBeGreaterThanOrEqual(tail - 1e-13);
      if (tail > 1e-200 && tail < 0.999) {
        expectClose(studentizedRangeUpperQuantile(tail, groups, degrees), at, 1e-8);
      }
    }),
    { seed: 20, numRuns: 100 },
  );
});

test('the ends are exact, and what lies outside throws with the value it refused', () => {
  expect(studentizedRangeUpperTail(0, 4, 10)).toBe(1);
  expect(studentizedRangeUpperTail(-1, 4, 10)).toBe(1);
  expect(studentizedRangeUpperTail(Infinity, 4, 10)).toBe(0);
  expect(studentizedRangeUpperQuantile(0, 4, 10)).toBe(Infinity);
  expect(studentizedRangeUpperQuantile(1, 4, 10)).toBe(0);
  expect(() => studentizedRangeUpperTail(3, 1, 10)).toThrow('not 1');
  expect(() => studentizedRangeUpperTail(3, 2.5, 10)).toThrow('not 2.5');
  expect(() => studentizedRangeUpperTail(3, 4, 0)).toThrow('not 0');
  expect(() => studentizedRangeUpperTail(NaN, 4, 9)).toThrow('not NaN');
  expect(() => studentizedRangeUpperQuantile(-0.2, 4, 9)).toThrow('not -0.2');
});
