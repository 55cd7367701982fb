import { choleskyFactor, choleskyInverse, choleskySolve } from './cholesky.ts';
import { projectColumns, projectionAt, type Spread, spreadTimes } from './covariance-structure.ts';
import type { FixedEffects } from './fixed-effects.ts';
import type { QrFactors } from './householder-qr.ts';
import { dependenciesOf } from './least-squares.ts';
import {
  columnOf,
  crossProduct,
  type Matrix,
  matrixFromColumns,
  matrixProduct,
  zeroMatrix,
} from './matrix.ts';

export interface MixedModelEstimation {
  /** The fixed terms' matrix and its factors; rows are units times the root of their size. */
  readonly x: Matrix;
  readonly fixed: QrFactors;
  readonly responses: Float64Array;
  /** What was subtracted from the responses. */
  readonly centre: number;
  /** The residual first, then the random terms, with their variances. */
  readonly spreads: readonly Spread[];
  readonly variances: Float64Array;
  /** Sampling covariance of the variances, zero rows for those at zero; null where it could not be had. */
  readonly varianceCovariance: Matrix | null;
}

/**
 * Generalised least squares at given variances: coefficients, their covariance (X' V^-1 X)^-1 and its
 * derivatives by the variances.
 *
 * Reference: Searle, Casella & McCulloch (1992) Variance Components, section 7.4; derivatives as in
 * Giesbrecht & Burns (1985) Biometrics 41, 477-486.
 */
export function mixedModelEffects(estimation: MixedModelEstimation): FixedEffects | null {
  const { x, fixed, spreads, variances } = estimation;
  const columns = fixed.independent;
  const reduced = matrixFromColumns(
    x.rows,
    columns.map((j) => columnOf(x, j)),
  );
  // With no fixed columns the projection is V^-1 itself.
  const inverse = projectionAt(zeroMatrix(x.rows, 0), spreads, variances);
  if (inverse === null) return null;
  const weighted = projectColumns(inverse, reduced);
  const lower = choleskyFactor(crossProduct(reduced, weighted));
  if (lower === null) return null;
  const covariance = choleskyInverse(lower);
  const scores = crossProduct(weighted, matrixFromColumns(x.rows, [estimation.responses]));
  const coefficients = new Float64Array(x.columns);
  choleskySolve(lower, scores.values).forEach((value, k) => {
    coefficients[columns[k]!] = value;
  });
  coefficients[0]! += estimation.centre;
  const pushed = matrixProduct(weighted, covariance);
  const derivatives = spreads.map((spread) => {
    const spreadColumns = Array.from({ length: pushed.columns }, (_, j) =>
      spreadTimes(spread, columnOf(pushed, j)),
    );
    return crossProduct(pushed, matrixFromColumns(x.rows, spreadColumns));
  });
  return {
    coefficients,
    covariance: expanded(covariance, columns, x.columns),
    dependencies: dependenciesOf(fixed),
    derivatives: derivatives.map((derivative) => expanded(derivative, columns, x.columns)),
    varianceCovariance: estimation.varianceCovariance,
    withoutError: [],
  };
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
