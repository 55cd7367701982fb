import { expect, test } from 'vitest';
import { betaLowerTail, betaUpperTail } from '../../../src/statistics/distributions/beta.ts';
import {
  chiSquareLowerTail,
  chiSquareUpperQuantile,
  chiSquareUpperTail,
} from '../../../src/statistics/distributions/chi-square.ts';
import { fLowerTail, fUpperQuantile, fUpperTail } from '../../../src/statistics/distributions/fisher-f.ts';
import {
  normalDensity,
  normalLogUpperTail,
  normalLowerTail,
  normalUpperQuantile,
  normalUpperTail,
} from '../../../src/statistics/distributions/normal.ts';
import { tTwoSided, tUpperQuantile, tUpperTail } from '../../../src/statistics/distributions/student-t.ts';
import { expectClose } from '../../support/close.ts';
import { numbersFromR } from '../../support/r.ts';

const degrees = [0.5, 1, 1.7, 2, 3, 4.3, 7, 12.75, 20, 30.2, 60, 200, 399.5, 400.5, 1000, 5000];
const ratios = [1e-6, 0.001, 0.1, 0.5, 0.9, 1, 1.1, 2, 3, 5, 10, 20, 50, 100, 500, 1e4, 1e6, 1e12, 1e30];
const chances = [1e-300, 1e-100, 1e-20, 1e-10, 1e-5, 0.001, 0.01, 0.05, 0.3, 0.49, 0.6, 0.9, 0.99, 0.9999];
const smallest = 1e-300;

const cross = (first: number[], second: number[]) => first.flatMap((a) => second.map((b) => [a, b] as const));

/** Compares a function with R's at every row; R's own denormal results are left out, and counted. */
async function compare(
  rows: readonly (readonly number[])[],
  ours: (...row: number[]) => number,
  r: string,
  tolerance = 1e-8,
): Promise<{ compared: number; smallestSeen: number }> {
  const columns = Object.fromEntries(
    rows[0]!.map((_, index) => [`a${index}`, rows.map((row) => row[index]!)]),
  );
  const expected = await numbersFromR(r, columns);
  expect(expected).toHaveLength(rows.length);
  let compared = 0;
  let smallestSeen = Infinity;
  rows.forEach((row, index) => {
    const reference = expected[index]!;
    if (Math.abs(reference) < smallest) return;
    expectClose(ours(...row), reference, tolerance, `${r} at ${row.join(', ')}:`);
    compared += 1;
    smallestSeen = Math.min(smallestSeen, Math.abs(reference));
  });
  return { compared, smallestSeen };
}

test('the upper and lower tails of F agree with R at whole and fractional degrees of freedom, down to 1e-250', async () => {
  const rows = cross(degrees, degrees).flatMap(([a, b]) => ratios.map((f) => [f, a, b]));
  const upper = await compare(
    rows,
    (f, a, b) => fUpperTail(f!, a!, b!),
    'pf(a0, a1, a2, lower.tail = FALSE)',
  );
  expect(upper.compared).toBeGreaterThan(3000);
  expect(upper.smallestSeen).toBeLessThan(1e-250);
  await compare(rows, (f, a, b) => fLowerTail(f!, a!, b!), 'pf(a0, a1, a2)');
});

test('the F tail with infinite second degrees of freedom agrees with R', async () => {
  const rows = cross([0.3, 1, 2.5, 40, 600], [1, 2.5, 17, 450]);
  await compare(rows, (f, a) => fUpperTail(f!, a!, Infinity), 'pf(a0, a1, Inf, lower.tail = FALSE)');
  await compare(rows, (f, a) => fLowerTail(f!, a!, Infinity), 'pf(a0, a1, Inf)');
});

test("Student's t tails agree with R on both sides of 0, down to 1e-250", async () => {
  const rows = cross([...ratios, ...ratios.map((t) => -t)], degrees);
  const upper = await compare(rows, (t, df) => tUpperTail(t!, df!), 'pt(a0, a1, lower.tail = FALSE)');
  expect(upper.smallestSeen).toBeLessThan(1e-250);
  await compare(rows, (t, df) => tTwoSided(t!, df!), '2 * pt(abs(a0), a1, lower.tail = FALSE)');
  expectClose(tUpperTail(1.959963984540054, Infinity), 0.025, 1e-12);
});

test('chi-square tails agree with R, near the median of many degrees of freedom too', async () => {
  const rows = cross(degrees, [-20, -8, -3, -1, -0.1, 0, 0.1, 1, 3, 8, 20, 60])
    .map(([df, z]) => [df + z * Math.sqrt(2 * df), df])
    .filter(([x]) => x! > 0);
  await compare(rows, (x, df) => chiSquareUpperTail(x!, df!), 'pchisq(a0, a1, lower.tail = FALSE)');
  await compare(rows, (x, df) => chiSquareLowerTail(x!, df!), 'pchisq(a0, a1)');
});

test('normal tails, their logarithm and the density agree with R from -37 to 37', async () => {
  const rows = Array.from({ length: 297 }, (_, index) => [-37 + index / 4]);
  await compare(rows, (z) => normalUpperTail(z!), 'pnorm(a0, lower.tail = FALSE)', 1e-11);
  await compare(rows, (z) => normalLowerTail(z!), 'pnorm(a0)', 1e-11);
  await compare(rows, (z) => normalDensity(z!), 'dnorm(a0)', 1e-12);
  await compare(
    [...rows, [50], [500], [5000]],
    (z) => normalLogUpperTail(z!),
    'pnorm(a0, lower.tail = FALSE, log.p = TRUE)',
    1e-11,
  );
});

test('the beta tails agree with R, the two adding to 1', async () => {
  const rows = cross([0.001, 0.2, 0.5, 0.77, 0.999], [0.5, 1, 3.3, 40]).map(([x, a]) => [x, a, 2.5]);
  await compare(rows, (x, a, b) => betaLowerTail(x!, a!, b!), 'pbeta(a0, a1, a2)');
  await compare(rows, (x, a, b) => betaUpperTail(x!, a!, b!), 'pbeta(a0, a1, a2, lower.tail = FALSE)');
  expect(betaLowerTail(0, 2, 3)).toBe(0);
  expect(betaLowerTail(1, 2, 3)).toBe(1);
});

test('upper quantiles of the normal agree with R to 1e-12', async () => {
  const rows = chances.map((p) => [p]);
  await compare(rows, (p) => normalUpperQuantile(p!), 'qnorm(a0, lower.tail = FALSE)', 1e-12);
  expect(normalUpperQuantile(0)).toBe(Infinity);
  expect(normalUpperQuantile(1)).toBe(-Infinity);
});

test("upper quantiles of Student's t, F and chi-square give their chance back in R", async () => {
  // R's own quantiles are less accurate in far tails, so its cumulative functions judge ours.
  const judge = async (
    name: string,
    ours: (p: number, ...df: number[]) => number,
    df: (readonly number[])[],
  ) => {
    const rows = chances.flatMap((p) => df.map((degreesOf) => [p, ours(p, ...degreesOf), ...degreesOf]));
    const usable = rows.filter((row) => Number.isFinite(row[1]) && row[1] !== 0);
    expect(usable.length).toBeGreaterThan(rows.length * 0.75);
    const rest = usable[0]!
      .slice(2)
      .map((_, index) => `a${index + 2}`)
      .join(', ');
    await compare(usable, (p) => p!, `${name}(a1, ${rest}, lower.tail = FALSE)`, 1e-9);
  };
  const single = degrees.map((df) => [df]);
  await judge('pt', tUpperQuantile, single);
  await judge('pchisq', chiSquareUpperQuantile, single);
  await judge('pf', fUpperQuantile, cross(degrees, [0.8, 2, 9.4, 33, 700]));
});

test('quantiles agree with published tables', () => {
  // Fisher and Yates (1963), Statistical Tables, tables III, IV and V; digits as printed, from memory.
  expectClose(tUpperQuantile(0.025, 1), 12.706, 0.0005 / 12.706);
  expectClose(tUpperQuantile(0.025, 10), 2.228, 0.0005 / 2.228);
  expectClose(tUpperQuantile(0.025, Infinity), 1.96, 0.0005 / 1.96);
  expectClose(chiSquareUpperQuantile(0.05, 4), 9.488, 0.0005 / 9.488);
  expectClose(fUpperQuantile(0.05, 5, 12), 3.11, 0.005 / 3.11);
});

test('the ends of every domain are exact, and what lies outside throws with the value it refused', () => {
  expect(fUpperTail(0, 2, 3)).toBe(1);
  expect(fUpperTail(Infinity, 2, 3)).toBe(0);
  expect(tUpperTail(Infinity, 3)).toBe(0);
  expect(tUpperTail(0, 3)).toBe(0.5);
  expect(chiSquareUpperTail(0, 3)).toBe(1);
  expect(chiSquareUpperTail(Infinity, 3)).toBe(0);
  expect(tUpperQuantile(0.5, 3)).toBe(0);
  expect(fUpperQuantile(0, 2, 3)).toBe(Infinity);
  expect(fUpperQuantile(1, 2, 3)).toBe(0);
  expect(() => fUpperTail(1, 0, 3)).toThrow('not 0 and 3');
  expect(() => tUpperTail(1, -1)).toThrow('not -1');
  expect(() => tUpperQuantile(1.5, 3)).toThrow('not 1.5');
  expect(() => chiSquareUpperTail(1, NaN)).toThrow('not NaN');
  expect(() => normalUpperQuantile(-0.1)).toThrow('not -0.1');
  expect(() => betaLowerTail(0.5, 0, 1)).toThrow('not 0 and 1');
});
