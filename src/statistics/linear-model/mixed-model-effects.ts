import { choleskyFactor, choleskyInverse, choleskySolve } from './cholesky.ts';
import { type QrFactors } from './householder-qr.ts';
import { dependenciesOf } from './least-squares.ts';
import type { FixedEffects } from './fixed-effects.ts';
import {
  columnOf,
  crossProduct,
  type Matrix,
  matrixFromColumns,
  matrixProduct,
  matrixTimesVector,
  zeroMatrix,
} from './matrix.ts';

export interface MixedModelEstimation {
  /** The fixed terms' matrix and its factors; rows are units times the root of their size. */
  readonly x: Matrix;
  readonly fixed: QrFactors;
  readonly responses: Float64Array;
  readonly centre: number;
  /** Indicator columns of each random term, rows scaled as those of `x`. */
  readonly random: readonly Matrix[];
  /** Residual variance first, then one for each random term. */
  readonly variances: Float64Array;
  /** Sampling covariance of the variances, zero rows for those at zero; null where it could not be had. */
  readonly varianceCovariance: Matrix | null;
}

/**
 * Generalised least squares at given variances: coefficients, their covariance (X' V^-1 X)^-1 and its
 * derivatives by the variances, for y = X b + sum Z_k u_k + e.
 *
 * Reference: Searle, Casella & McCulloch (1992) Variance Components, section 7.4; derivatives as in
 * Giesbrecht & Burns (1985) Biometrics 41, 477-486.
 */
export function mixedModelEffects(estimation: MixedModelEstimation): FixedEffects | null {
  const { x, fixed, random, variances } = estimation;
  const columns = fixed.independent;
  const reduced = matrixFromColumns(
    x.rows,
    columns.map((j) => columnOf(x, j)),
  );
  const weighted = inverseTimes(random, variances, reduced);
  if (weighted === null) return null;
  const lower = choleskyFactor(crossProduct(reduced, weighted));
  if (lower === null) return null;
  const covariance = choleskyInverse(lower);
  const scores = matrixFromColumns(x.rows, [estimation.responses]);
  const solved = choleskySolve(lower, crossProduct(weighted, scores).values);
  const derivatives = [null, ...random].map((z) => {
    const pulled = z === null ? weighted : crossProduct(z, weighted);
    const pushed = matrixProduct(pulled, covariance);
    return crossProduct(pushed, pushed);
  });
  const coefficients = new Float64Array(x.columns);
  solved.forEach((value, k) => {
    coefficients[columns[k]!] = value;
  });
  coefficients[0]! += estimation.centre;
  const expand = (matrix: Matrix) => expanded(matrix, columns, x.columns);
  return {
    coefficients,
    covariance: expand(covariance),
    dependencies: dependenciesOf(fixed),
    derivatives: derivatives.map(expand),
    varianceCovariance: estimation.varianceCovariance,
    withoutError: [],
  };
}

/** V^-1 X, by the inverse of a matrix as large as the random terms have levels. */
function inverseTimes(random: readonly Matrix[], variances: Float64Array, x: Matrix): Matrix | null {
  const residual = variances[0]!;
  const present = random.flatMap((z, k) => {
    const root = Math.sqrt(variances[k + 1]! / residual);
    return root === 0
      ? []
      : Array.from({ length: z.columns }, (_, j) => columnOf(z, j).map((value) => value * root));
  });
  const result = zeroMatrix(x.rows, x.columns);
  const scaled = matrixFromColumns(x.rows, present);
  const inner = crossProduct(scaled, scaled);
  for (let k = 0; k < inner.rows; k++) inner.values[k * inner.rows + k]! += 1;
  const lower = choleskyFactor(inner);
  if (lower === null) return null;
  const projected = crossProduct(scaled, x);
  for (let j = 0; j < x.columns; j++) {
    const taken = matrixTimesVector(scaled, choleskySolve(lower, columnOf(projected, j)));
    const target = columnOf(result, j);
    columnOf(x, j).forEach((value, i) => {
      target[i] = (value - taken[i]!) / residual;
    });
  }
  return result;
}

function expanded(matrix: Matrix, columns: readonly number[], size: number): Matrix {
  const result = zeroMatrix(size, size);
  columns.forEach((i, a) => {
    columns.forEach((j, b) => {
      result.values[j * size + i] = matrix.values[b * matrix.rows + a]!;
    });
  });
  return result;
}
