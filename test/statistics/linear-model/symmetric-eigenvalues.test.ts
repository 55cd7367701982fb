import { describe, expect, test } from 'vitest';
import { symmetricEigen } from '../../../src/statistics/linear-model/symmetric-eigen.ts';
import { symmetricEigenvalues } from '../../../src/statistics/linear-model/symmetric-eigenvalues.ts';
import { type Matrix, matrixFromRows } from '../../../src/statistics/linear-model/matrix.ts';
import { seededRandom } from '../../../src/statistics/seeded-random.ts';
import { numbersFromR } from '../../support/r.ts';

function randomSymmetric(size: number, seed: number): Matrix {
  const random = seededRandom(seed);
  const rows = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) rows[i]![j] = rows[j]![i] = random.normal();
  }
  return matrixFromRows(rows);
}

describe('eigenvalues of a symmetric matrix', () => {
  test('of [[2, 1], [1, 2]] are 3 and 1, of a diagonal matrix its diagonal, of one number itself', () => {
    const rows = [
      [2, 1],
      [1, 2],
    ];
    const [first, second] = symmetricEigenvalues(matrixFromRows(rows));
    expect(first).toBeCloseTo(3, 14);
    expect(second).toBeCloseTo(1, 14);
    const diagonal = [
      [1, 0, 0],
      [0, 5, 0],
      [0, 0, -2],
    ];
    expect(symmetricEigenvalues(matrixFromRows(diagonal))).toEqual([5, 1, -2]);
    expect(symmetricEigenvalues(matrixFromRows([[7]]))).toEqual([7]);
  });

  test.each([3, 8, 25, 60])('of a matrix of %i agree with Jacobi and with R', async (size) => {
    const matrix = randomSymmetric(size, size);
    const found = symmetricEigenvalues(matrix);
    const scale = Math.max(...found.map(Math.abs));
    symmetricEigen(matrix).values.forEach((value, k) => {
      expect(Math.abs(found[k]! - value)).toBeLessThan(1e-13 * size * scale);
    });
    const expected = await numbersFromR('eigen(matrix(a, n), symmetric = TRUE, only.values = TRUE)$values', {
      a: Array.from(matrix.values),
      n: size,
    });
    expected.forEach((value, k) => expect(Math.abs(found[k]! - value)).toBeLessThan(1e-13 * size * scale));
  });

  test('that are repeated, as of a ring of neighbours, come out as often', () => {
    const size = 12;
    const ring = Array.from({ length: size }, (_, i) =>
      Array.from({ length: size }, (__, j) =>
        (i - j + size) % size === 1 || (j - i + size) % size === 1 ? 1 : 0,
      ),
    );
    // 2 cos(2 pi k / 12), k from 0 to 11.
    const expected = Array.from({ length: size }, (_, k) => 2 * Math.cos((2 * Math.PI * k) / size)).sort(
      (a, b) => b - a,
    );
    symmetricEigenvalues(matrixFromRows(ring)).forEach((value, k) =>
      expect(value).toBeCloseTo(expected[k]!, 13),
    );
  });
});
