import { describe, expect, test } from 'vitest';
import { fUpperTail } from '../../../src/statistics/distributions/fisher-f.ts';
import { type Matrix, zeroMatrix } from '../../../src/statistics/linear-model/matrix.ts';
import { modelTerms } from '../../../src/statistics/linear-model/model-terms.ts';
import { moransI } from '../../../src/statistics/morans-i/morans-i.ts';
import { moransIExactTail } from '../../../src/statistics/morans-i/morans-i-exact-tail.ts';
import { moransIPermutationTest } from '../../../src/statistics/morans-i/morans-i-permutation-test.ts';
import { chanceFormIsPositive } from '../../../src/statistics/morans-i/quadratic-form-tail.ts';
import { seededRandom } from '../../../src/statistics/seeded-random.ts';
import { expectClose, expectWithin } from '../../support/close.ts';
import { runR } from '../../support/r.ts';

/** Rook neighbours on a grid, positions row by row; `left` picks the positions that are planted. */
function rook(rows: number, columns: number, left: (position: number) => boolean = () => true): Matrix {
  const positions = Array.from({ length: rows * columns }, (_, k) => k).filter(left);
  const weights = zeroMatrix(positions.length, positions.length);
  positions.forEach((a, i) => {
    positions.forEach((b, j) => {
      const [down, across] = [
        Math.floor(a / columns) - Math.floor(b / columns),
        (a % columns) - (b % columns),
      ];
      if (Math.abs(down) + Math.abs(across) === 1) weights.values[j * positions.length + i] = 1;
    });
  });
  return weights;
}

const treatment = [0, 1, 2, 0, 2, 0, 1, 1, 1, 2, 0, 2];
const model = modelTerms(12, [{ name: 'cultivar', levels: 3, values: treatment }], [['cultivar']]);
const weights = rook(3, 4);
const y = [118, 131, 109, 120, 114, 121, 133, 137, 128, 111, 119, 116];

test('a grid of three cultivars: I and its moments as by matrices in R', async () => {
  const expected = (await runR(
    `W <- matrix(w, 12); X <- model.matrix(~ factor(t)); n <- 12; S <- sum(W)
     M <- diag(n) - X %*% solve(crossprod(X), t(X)); e <- M %*% y; m <- n - ncol(X); tr <- function(A) sum(diag(A))
     E <- n / S * tr(M %*% W) / m
     V <- (n / S)^2 * (tr(M %*% W %*% M %*% t(W)) + tr(M %*% W %*% M %*% W) + tr(M %*% W)^2) / (m * (m + 2)) - E^2
     I <- n / S * sum(e * (W %*% e)) / sum(e^2)
     list(I = I, E = E, V = V, p = pnorm((I - E) / sqrt(V), lower.tail = FALSE))`,
    { w: [...weights.values], t: treatment, y },
  )) as { I: number; E: number; V: number; p: number };
  const found = moransI(y, model.matrix, weights);
  if (found.i === null) throw new Error(found.reason);
  expectClose(found.i, expected.I, 1e-10);
  expectClose(found.expected, expected.E, 1e-10);
  expectClose(found.variance, expected.V, 1e-10);
  expectClose(found.p, expected.p, 1e-10);
});

describe('the expectation is that for residuals, not -1 / (n - 1)', () => {
  test('by brute force over normal values', () => {
    const random = seededRandom(41);
    const draws = Array.from({ length: 6_000 }, () => {
      const found = moransI(
        y.map(() => random.normal()),
        model.matrix,
        weights,
      );
      if (found.i === null) throw new Error(found.reason);
      return found;
    });
    const mean = draws.reduce((sum, { i }) => sum + i, 0) / draws.length;
    const variance = draws.reduce((sum, { i }) => sum + (i - mean) ** 2, 0) / draws.length;
    const standardError = Math.sqrt(variance / draws.length);
    expect(Math.abs(mean - draws[0]!.expected)).toBeLessThan(4 * standardError);
    expect(Math.abs(mean + 1 / 11)).toBeGreaterThan(8 * standardError);
    expectClose(variance, draws[0]!.variance, 0.08);
  });

  test('exactly, where the model leaves two dimensions: the mean over a circle of residuals', () => {
    // Four positions in a row, two cultivars: the residuals lie on a plane spanned by (1,-1,0,0), (0,0,1,-1).
    const two = modelTerms(4, [{ name: 'cultivar', levels: 2, values: [0, 0, 1, 1] }], [['cultivar']]);
    const row = rook(1, 4);
    const steps = 720;
    const values = Array.from({ length: steps }, (_, k) => {
      const angle = (2 * Math.PI * (k + 0.5)) / steps;
      const [a, b] = [Math.cos(angle), Math.sin(angle)];
      const found = moransI([a, -a, b, -b], two.matrix, row);
      if (found.i === null) throw new Error(found.reason);
      return found;
    });
    const mean = values.reduce((sum, { i }) => sum + i, 0) / steps;
    const variance = values.reduce((sum, { i }) => sum + (i - mean) ** 2, 0) / steps;
    expectClose(values[0]!.expected, mean, 1e-10);
    expectClose(values[0]!.variance, variance, 1e-10);
    expectClose(mean, -2 / 3, 1e-10);
  });

  test('of a mean alone it is -1 / (n - 1)', () => {
    const found = moransI(y, modelTerms(12, [], []).matrix, weights);
    expectClose(found.i === null ? null : found.expected, -1 / 11, 1e-12);
  });
});

describe('the exact tail', () => {
  test('of two weights: a ratio of two squares, an arc of a circle', () => {
    for (const [up, down] of [
      [1, 1],
      [3, 1],
      [0.01, 2],
      [5, 0.001],
    ] as const) {
      expectWithin(
        chanceFormIsPositive([up, -down]),
        1 - (2 / Math.PI) * Math.atan(Math.sqrt(down / up)),
        1e-9,
      );
    }
  });

  test('of two repeated weights: an F', () => {
    for (const [p, q, up, down] of [
      [3, 5, 1, 2],
      [1, 4, 2, 1],
      [6, 2, 0.5, 4],
      [8, 9, 1, 1],
    ] as const) {
      const form = [...new Array<number>(p).fill(up), ...new Array<number>(q).fill(-down)];
      expectWithin(chanceFormIsPositive(form), fUpperTail((down * q) / (up * p), p, q), 1e-9);
    }
  });

  test('of weights of one sign', () => {
    expect(chanceFormIsPositive([1, 2, 0])).toBe(1);
    expect(chanceFormIsPositive([-1, -2])).toBe(0);
  });

  test('agrees with brute force over normal values and with the permutation test', () => {
    const p = moransIExactTail(y, model.matrix, weights)!;
    const observed = moransI(y, model.matrix, weights).i!;
    const random = seededRandom(77);
    const n = 6_000;
    let reached = 0;
    for (let k = 0; k < n; k++) {
      const drawn = y.map(() => random.normal());
      if (moransI(drawn, model.matrix, weights).i! >= observed) reached += 1;
    }
    expectWithin(p, reached / n, 4 * Math.sqrt((p * (1 - p)) / n));
    const permuted = moransIPermutationTest(y, model.matrix, weights, seededRandom(5))!;
    expect(permuted).toMatchObject({ exact: false, draws: 20_000, arrangements: 479001600 });
    expectWithin(permuted.p, p, 0.03);
  });
});

describe('the permutation test', () => {
  test('goes through all orders where they are few, mirror images tying', () => {
    // Four positions in a row, the mean alone: 24 orders; 1 2 3 4 and its mirror image are the most alike.
    const mean = modelTerms(4, [], []).matrix;
    const found = moransIPermutationTest([1, 2, 3, 4], mean, rook(1, 4), seededRandom(0));
    expect(found).toEqual({ p: 2 / 24, arrangements: 24, exact: true, draws: 0 });
  });

  test('repeats with the same seed', () => {
    const once = moransIPermutationTest(y, model.matrix, weights, seededRandom(9));
    expect(moransIPermutationTest(y, model.matrix, weights, seededRandom(9))).toEqual(once);
  });
});

describe('what cannot be reckoned', () => {
  test('residuals that do not vary, no neighbours, nothing left by the model', () => {
    const fitted = treatment.map((level) => 100.1 + level * 0.7);
    expect(moransI(fitted, model.matrix, weights)).toEqual({
      i: null,
      reason: 'the error is zero to rounding',
    });
    expect(moransI(y, model.matrix, zeroMatrix(12, 12))).toEqual({
      i: null,
      reason: 'no observation has a neighbour',
    });
    const full = modelTerms(3, [{ name: 'a', levels: 3, values: [0, 1, 2] }], [['a']]).matrix;
    expect(moransI([1, 2, 4], full, rook(1, 3))).toEqual({
      i: null,
      reason: 'no degrees of freedom are left for error',
    });
    expect(moransIExactTail([1, 2, 4], full, rook(1, 3))).toBeNull();
  });

  test('no neighbours left to compare: I is 0 whatever the weights, so no p of rounding', () => {
    // Five in a row, treatments a b a c b: residuals are u, v, -u, 0, -v, so that the products of neighbours
    // u v, -u v, 0 and 0 always sum to 0.
    const values = [0, 1, 0, 2, 1];
    const five = modelTerms(5, [{ name: 'treatment', levels: 3, values }], [['treatment']]);
    const found = moransI([98.7, 69.2, 107.8, 89.7, 81], five.matrix, rook(1, 5));
    expect(found).toEqual({ i: 0, expected: 0, variance: 0, p: null });
  });

  test('one dimension left: I is certain, so no p', () => {
    const found = moransI([3, 5], modelTerms(2, [], []).matrix, rook(1, 2));
    expect(found).toMatchObject({ variance: 0, p: null });
    expectClose(found.i, -1, 1e-12);
  });

  test("weights that are not symmetric are a programmer's error", () => {
    const lopsided = zeroMatrix(12, 12);
    lopsided.values[1] = 1;
    expect(() => moransI(y, model.matrix, lopsided)).toThrow('symmetric weights');
    expect(() => moransI(y, model.matrix, rook(2, 2))).toThrow('weights of 12 by 12, not 4 by 4');
  });

  test('a position left out of the grid', () => {
    const fewer = rook(3, 4, (k) => k !== 5);
    expect(fewer.rows).toBe(11);
    const kept = modelTerms(11, [], []).matrix;
    expect(
      moransI(
        y.filter((_, k) => k !== 5),
        kept,
        fewer,
      ).i,
    ).not.toBeNull();
  });
});
