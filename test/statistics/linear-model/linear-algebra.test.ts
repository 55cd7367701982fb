import { describe, expect, test } from 'vitest';
import {
  choleskyFactor,
  choleskyInverse,
  choleskySolve,
  logDeterminant,
} from '../../../src/statistics/linear-model/cholesky.ts';
import {
  householderQr,
  invertTriangle,
  rotate,
  rotateBack,
  solveTriangle,
} from '../../../src/statistics/linear-model/householder-qr.ts';
import {
  crossProduct,
  entryOf,
  identityMatrix,
  type Matrix,
  matrixFromColumns,
  matrixFromRows,
  matrixProduct,
  matrixTimesVector,
  quadraticForm,
  rowsOf,
  sandwich,
} from '../../../src/statistics/linear-model/matrix.ts';
import { sumToZeroContrasts } from '../../../src/statistics/linear-model/sum-to-zero-contrasts.ts';
import { symmetricEigen } from '../../../src/statistics/linear-model/symmetric-eigen.ts';
import { seededRandom } from '../../../src/statistics/seeded-random.ts';
import { expectClose, expectWithin } from '../../support/close.ts';
import { numbersFromR } from '../../support/r.ts';

const random = seededRandom(2024);
const randomMatrix = (rows: number, columns: number): Matrix =>
  matrixFromRows(Array.from({ length: rows }, () => Array.from({ length: columns }, () => random.normal())));

function expectSame(actual: Matrix, expected: Matrix, tolerance = 1e-12): void {
  expect([actual.rows, actual.columns]).toEqual([expected.rows, expected.columns]);
  actual.values.forEach((value, k) => {
    expectWithin(value, expected.values[k]!, tolerance);
  });
}

describe('matrices', () => {
  test('products by hand', () => {
    const a = matrixFromRows([
      [1, 2],
      [3, 4],
      [5, 6],
    ]);
    const b = matrixFromRows([
      [1, 0, 2],
      [0, 1, 3],
    ]);
    expect(rowsOf(matrixProduct(a, b))).toEqual([
      [1, 2, 8],
      [3, 4, 18],
      [5, 6, 28],
    ]);
    expect(rowsOf(crossProduct(a, a))).toEqual([
      [35, 44],
      [44, 56],
    ]);
    expect([...matrixTimesVector(a, Float64Array.of(1, -1))]).toEqual([-1, -1, -1]);
    expect(quadraticForm(Float64Array.of(1, 1), crossProduct(a, a), Float64Array.of(1, -1))).toBe(-21);
    expect(rowsOf(sandwich([Float64Array.of(1, 1), Float64Array.of(1, -1)], crossProduct(a, a)))).toEqual([
      [179, -21],
      [-21, 3],
    ]);
  });

  test("rows or columns of unequal length are a programmer's error", () => {
    expect(() => matrixFromRows([[1, 2], [3]])).toThrow('rows of one length: row 0 has 2, row 1 1');
    expect(() => matrixFromColumns(2, [[1]])).toThrow('columns of 2 values: column 0 has 1');
  });
});

describe('Householder QR', () => {
  test('rotations keep lengths and undo one another; least squares is solved', async () => {
    const x = randomMatrix(9, 4);
    const y = Float64Array.from({ length: 9 }, () => random.normal());
    const qr = householderQr(x);
    expect(qr.independent).toEqual([0, 1, 2, 3]);
    rotateBack(qr, rotate(qr, y)).forEach((value, i) => {
      expectWithin(value, y[i]!, 1e-14);
    });
    const solution = solveTriangle(qr, rotate(qr, y));
    const expected = await numbersFromR('qr.solve(matrix(x, 9), y)', { x: [...x.values], y: [...y] });
    solution.forEach((value, k) => {
      expectClose(value, expected[k]!, 1e-11);
    });
    const inverse = matrixFromColumns(4, invertTriangle(qr));
    expectSame(
      matrixProduct(
        matrixProduct(
          inverse,
          matrixFromRows(rowsOf(inverse)[0]!.map((_, j) => rowsOf(inverse).map((row) => row[j]!))),
        ),
        crossProduct(x, x),
      ),
      identityMatrix(4),
      1e-10,
    );
  });

  test('dependent columns are set aside with what they are made of, the order kept', () => {
    const x = randomMatrix(7, 3);
    const [a, b, c] = [0, 1, 2].map((j) => x.values.slice(j * 7, j * 7 + 7)) as [
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    const combined = a.map((value, i) => 2 * value - 3 * b[i]!);
    const qr = householderQr(matrixFromColumns(7, [a, b, combined, new Float64Array(7), c]));
    expect(qr.independent).toEqual([0, 1, 4]);
    expect(qr.aliased.map(({ column }) => column)).toEqual([2, 3]);
    expectClose(qr.aliased[0]!.weights[0], 2, 1e-12);
    expectClose(qr.aliased[0]!.weights[1], -3, 1e-12);
    expect([...qr.aliased[1]!.weights].map(Math.abs)).toEqual([0, 0]);
  });

  test('more columns than rows, columns of very unlike size', () => {
    expect(householderQr(randomMatrix(3, 5)).independent).toEqual([0, 1, 2]);
    const scaled = matrixFromColumns(3, [
      [1e-200, 2e-200, 0],
      [0, 1e200, 1e200],
      [1, 0, 1],
    ]);
    expect(householderQr(scaled).independent).toEqual([0, 1, 2]);
  });
});

describe('Cholesky', () => {
  test('solves, inverts and gives the determinant', async () => {
    const root = randomMatrix(6, 6);
    const a = crossProduct(root, root);
    const lower = choleskyFactor(a)!;
    expectSame(matrixProduct(choleskyInverse(lower), a), identityMatrix(6), 1e-9);
    const b = Float64Array.of(1, 2, 3, 4, 5, 6);
    matrixTimesVector(a, choleskySolve(lower, b)).forEach((value, i) => {
      expectClose(value, b[i]!, 1e-9);
    });
    const [expected] = await numbersFromR('as.numeric(determinant(matrix(a, 6))$modulus)', {
      a: [...a.values],
    });
    expectClose(logDeterminant(lower), expected!, 1e-11);
  });

  test('a singular matrix, or one that is not positive, has no factor', () => {
    expect(
      choleskyFactor(
        matrixFromRows([
          [1, 1],
          [1, 1],
        ]),
      ),
    ).toBeNull();
    expect(
      choleskyFactor(
        matrixFromRows([
          [0, 0],
          [0, 1],
        ]),
      ),
    ).toBeNull();
    expect(
      choleskyFactor(
        matrixFromRows([
          [1, 2],
          [2, 1],
        ]),
      ),
    ).toBeNull();
  });
});

describe('eigenvalues of symmetric matrices', () => {
  test('as in R, with orthonormal vectors', async () => {
    const root = randomMatrix(8, 8);
    const a = crossProduct(root, root);
    const { values, vectors } = symmetricEigen(a);
    const expected = await numbersFromR('eigen(matrix(a, 8), symmetric = TRUE)$values', { a: [...a.values] });
    values.forEach((value, k) => {
      expectClose(value, expected[k]!, 1e-10);
    });
    const basis = matrixFromColumns(8, vectors);
    expectSame(crossProduct(basis, basis), identityMatrix(8), 1e-13);
    vectors.forEach((vector, k) => {
      matrixTimesVector(a, vector).forEach((value, i) => {
        expectWithin(value, values[k]! * vector[i]!, 1e-11 * values[0]!);
      });
    });
  });

  test('of a diagonal, a repeated and an empty matrix', () => {
    expect(
      symmetricEigen(
        matrixFromRows([
          [1, 0],
          [0, 3],
        ]),
      ).values,
    ).toEqual([3, 1]);
    expect(symmetricEigen(identityMatrix(3)).values).toEqual([1, 1, 1]);
    expect(symmetricEigen(matrixFromRows([])).values).toEqual([]);
  });
});

test('contrasts are orthonormal and sum to zero', () => {
  for (const levels of [2, 3, 7]) {
    const contrasts = sumToZeroContrasts(levels);
    expectSame(crossProduct(contrasts, contrasts), identityMatrix(levels - 1), 1e-14);
    for (let j = 0; j < levels - 1; j++) {
      let sum = 0;
      for (let i = 0; i < levels; i++) sum += entryOf(contrasts, i, j);
      expectWithin(sum, 0, 1e-14);
    }
  }
  expect(sumToZeroContrasts(1).columns).toBe(0);
});
