import { describe as suite, expect, test } from 'vitest';
import { cholesky } from '../../../src/statistics/dunnett/cholesky.ts';
import { correlationOf, nearestFactors } from '../../../src/statistics/dunnett/correlation.ts';
import { dunnett } from '../../../src/statistics/dunnett/dunnett.ts';
import { logLargestFromProduct } from '../../../src/statistics/dunnett/largest-from-product.ts';
import { logLargestUpperTail } from '../../../src/statistics/dunnett/largest-of-normals.ts';
import { normalUpperQuantile, normalUpperTail } from '../../../src/statistics/distributions/normal.ts';
import { seededRandom } from '../../../src/statistics/seeded-random.ts';
import { expectClose, expectWithin } from '../../support/close.ts';
import { largestByIteratedQuadrature } from '../../support/largest-by-iterated-quadrature.ts';
import { numbersFromR } from '../../support/r.ts';

const places = [0.1, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5];

/** The p asked for, within 1e-6 and within 1e-4 of itself. */
function expectChance(found: number, expected: number, what: string): void {
  expectWithin(found, expected, 1e-6, what);
  expectClose(found, expected, 1e-4, what);
}

test('correlations that are products are reached from others, and agree with their exact quadrature', () => {
  const factors = [0.8, 0.6, 0.75, 0.55, 0.7, 0.65, 0.5, 0.85];
  for (const size of [3, 4, 5, 6, 8]) {
    const own = factors.slice(0, size);
    const product = own.map((b, i) => own.map((c, j) => (i === j ? 1 : b * c)));
    const exact = logLargestUpperTail(own);
    // From nine tenths of its factors every correlation has a fifth of its way to go.
    const chance = logLargestFromProduct(product, (r) => nearestFactors(r).map((b) => 0.9 * b));
    for (const w of places) {
      const [found, expected] = [Math.exp(chance(w)), Math.exp(exact(w))];
      expectWithin(found, expected, size < 6 ? 2e-6 : 5e-5, `${size} comparisons, w ${w}`);
      expectClose(found, expected, 1e-4, `${size} comparisons, w ${w}`);
    }
  }
});

const three = [
  [1, 0.9, 0.1],
  [0.9, 1, 0.5],
  [0.1, 0.5, 1],
];

test('three comparisons that are no product agree with nested integration in R', async () => {
  const nested = `
    within <- function(w) {
      L <- t(chol(matrix(r, 3)))
      second <- function(x) sapply(x, function(x) {
        third <- function(y) {
          m <- L[3, 1] * x + L[3, 2] * y
          dnorm(y) * (pnorm((w - m) / L[3, 3]) - pnorm((-w - m) / L[3, 3]))
        }
        ends <- pmax(-9, pmin(9, (c(-w, w) - L[2, 1] * x) / L[2, 2]))
        dnorm(x) * integrate(third, ends[1], ends[2], rel.tol = 1e-10, abs.tol = 1e-13)$value
      })
      integrate(second, -w, w, rel.tol = 1e-9, abs.tol = 1e-12)$value
    }
    1 - sapply(w, within)`;
  const expected = await numbersFromR(nested, { r: three.flat(), w: places });
  const chance = logLargestFromProduct(three);
  places.forEach((w, index) => {
    expectWithin(Math.exp(chance(w)), expected[index]!, 1e-7, `w ${w}`);
    expectClose(Math.exp(chance(w)), expected[index]!, 1e-4, `w ${w}`);
  });
});

/** Differences of so many levels from a check in blocks with some plots lost, by least squares. */
function fromBlocks(
  levels: number,
  blocks: number,
  lost: readonly (readonly [number, number])[],
): number[][] {
  const grown = Array.from({ length: levels + 1 }, (_, level) =>
    Array.from({ length: blocks }, (__, block) =>
      lost.some(([a, b]) => a === level && b === block) ? 0 : 1,
    ),
  );
  const sizes = Array.from({ length: blocks }, (_, block) =>
    grown.reduce((total, row) => total + row[block]!, 0),
  );
  // What is known of the levels after blocks are fitted; without the check its inverse is the covariance wanted.
  const known = grown
    .slice(1)
    .map((row, i) =>
      grown
        .slice(1)
        .map((other, j) =>
          row.reduce<number>(
            (total, plant, block) => total + (i === j ? plant : 0) - (plant * other[block]!) / sizes[block]!,
            0,
          ),
        ),
    );
  return correlationOf(inverse(known));
}

/** By Gauss and Jordan's elimination; the matrix positive definite. */
function inverse(matrix: readonly (readonly number[])[]): number[][] {
  const rows = matrix.map((row, i) => [...row, ...matrix.map((_, j) => (i === j ? 1 : 0))]);
  rows.forEach((pivot, column) => {
    const by = pivot[column]!;
    pivot.forEach((value, index) => (pivot[index] = value / by));
    rows.forEach((row) => {
      const times = row[column]!;
      if (row !== pivot) row.forEach((value, index) => (row[index] = value - times * pivot[index]!));
    });
  });
  return rows.map((row) => row.slice(matrix.length));
}

const lost = [
  [1, 0],
  [2, 0],
  [3, 1],
  [4, 2],
  [4, 1],
  [2, 3],
] as const;

test('four and five comparisons agree with quadrature over all but the last', () => {
  const far = [
    [1, 0.62, 0.41, 0.3],
    [0.62, 1, 0.45, 0.55],
    [0.41, 0.45, 1, 0.7],
    [0.3, 0.55, 0.7, 1],
  ];
  for (const r of [far, fromBlocks(4, 4, lost), fromBlocks(5, 4, lost)]) {
    const chance = logLargestFromProduct(r);
    for (const w of places) {
      expectChance(Math.exp(chance(w)), largestByIteratedQuadrature(r, w), `w ${w}`);
    }
  }
});

suite('more comparisons, in blocks with plots lost', () => {
  test.each([5, 6, 8])(
    '%i: the chance that all of the first four stay within is no less than that of all',
    (size) => {
      const r = fromBlocks(size, 4, lost);
      const chance = logLargestFromProduct(r);
      const four = r.slice(0, 4).map((row) => row.slice(0, 4));
      for (const w of places) {
        const p = Math.exp(chance(w));
        expect(p).toBeGreaterThan(largestByIteratedQuadrature(four, w) - 1e-9);
        expect(p).toBeLessThanOrEqual(Math.min(1, 2 * size * normalUpperTail(w)) * (1 + 1e-9));
        // Sidak's inequality, for any correlations: no less likely to be all within than if independent.
        expect(p).toBeLessThanOrEqual(1 - (1 - 2 * normalUpperTail(w)) ** size + 1e-9);
      }
    },
  );

  test('eight agree with a million plain draws, within four standard errors', () => {
    const r = fromBlocks(8, 4, lost);
    const triangle = cholesky(r);
    const chance = logLargestFromProduct(r);
    const random = seededRandom(64);
    const largest = Float64Array.from({ length: 1e6 }, () => {
      const z = r.map(() => normalUpperQuantile(random.uniform() + 2 ** -54));
      return Math.max(
        ...triangle.map((row) => Math.abs(z.reduce((total, value, k) => total + row[k]! * value, 0))),
      );
    });
    for (const w of [1, 1.5, 2, 2.5, 3]) {
      const p = Math.exp(chance(w));
      const drawn = largest.filter((value) => value > w).length / largest.length;
      expectWithin(drawn, p, 4 * Math.sqrt((p * (1 - p)) / largest.length), `w ${w}`);
    }
  });
});

test('the order and the signs of comparisons make no difference', () => {
  const random = seededRandom(8);
  for (const r of [three, fromBlocks(5, 4, lost), fromBlocks(8, 4, lost)]) {
    const chance = logLargestFromProduct(r);
    for (let round = 0; round < 3; round += 1) {
      const order = random.shuffle(r.map((_, index) => index));
      const signs = r.map(() => (random.uniform() < 0.5 ? -1 : 1));
      const other = logLargestFromProduct(
        order.map((i) => order.map((j) => r[i]![j]! * signs[i]! * signs[j]!)),
      );
      for (const w of places) expectWithin(Math.exp(other(w)), Math.exp(chance(w)), 1e-7, `w ${w}`);
    }
  }
});

test('what is computed twice is the same, bit for bit, and has no seed', () => {
  const r = fromBlocks(5, 4, lost);
  expect(dunnett(r)).toMatchObject({ method: 'lattice', seed: null });
  expect(dunnett(r).upperTail(2.3, 9.5)).toBe(dunnett(r).upperTail(2.3, 9.5));
  expect(dunnett(r).criticalValue(0.05, 9.5)).toBe(dunnett(r).criticalValue(0.05, 9.5));
});
