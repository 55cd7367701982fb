import { choleskyFactor, choleskyInverse, choleskySolve, logDeterminant } from './cholesky.ts';
import {
  crossProduct,
  dotProduct,
  identityMatrix,
  type Matrix,
  matrixProduct,
  matrixTimesVector,
  zeroMatrix,
} from './matrix.ts';

/**
 * What is left of the responses once the fixed terms are projected out, as far as the variances see it:
 * y ~ N(0, s0 I + sum s_k B_k B_k') in a few dimensions, and beside it `restDf` independent values of
 * variance s0 alone, whose squares sum to `restSumOfSquares`.
 */
export interface ResidualSpace {
  readonly y: Float64Array;
  readonly random: readonly Matrix[];
  readonly restDf: number;
  readonly restSumOfSquares: number;
}

/** Minus twice the restricted log-likelihood (without its constant) at some variances, with its slopes. */
export interface RestrictedDeviance {
  readonly deviance: number;
  readonly gradient: Float64Array;
  /** Second derivatives as observed ... */
  readonly observed: Matrix;
  /** ... and as expected; the latter cannot be other than positive (semi)definite. */
  readonly expected: Matrix;
}

/**
 * The restricted deviance log|V| + y' V^-1 y and its derivatives by the variances, the residual variance
 * first. Null where V is not positive definite.
 *
 * Reference: Searle, Casella & McCulloch (1992) Variance Components, section 6.6.
 */
export function restrictedDeviance(space: ResidualSpace, variances: Float64Array): RestrictedDeviance | null {
  const residual = variances[0]!;
  if (!(residual > 0)) return null;
  const lower = choleskyFactor(covarianceOf(space, variances));
  if (lower === null) return null;
  const inverse = choleskyInverse(lower);
  const weighted = choleskySolve(lower, space.y);
  const count = variances.length;
  const observed = zeroMatrix(count, count);
  const expected = zeroMatrix(count, count);
  const gradient = new Float64Array(count);

  // For component k: V^-1 B_k, B_k' V^-1 y, and the responses' share V^-1 B_k B_k' V^-1 y.
  const roots = [identityMatrix(space.y.length), ...space.random];
  const products = roots.map((root, k) => (k === 0 ? inverse : matrixProduct(inverse, root)));
  const scores = roots.map((root, k) => (k === 0 ? weighted : transposeTimes(root, weighted)));
  const pulls = products.map((product, k) => matrixTimesVector(product, scores[k]!));
  const working = roots.map((root, k) => (k === 0 ? weighted : matrixTimesVector(root, scores[k]!)));
  for (let i = 0; i < count; i++) {
    gradient[i] = traceOf(roots[i]!, products[i]!, i === 0) - dotProduct(scores[i]!, scores[i]!);
    for (let j = 0; j <= i; j++) {
      const trace =
        j === 0 ? sumOfSquares(products[i]!) : sumOfSquares(crossProduct(roots[i]!, products[j]!));
      const bend = dotProduct(working[i]!, pulls[j]!);
      for (const at of [i * count + j, j * count + i]) {
        expected.values[at] = trace;
        observed.values[at] = 2 * bend - trace;
      }
    }
  }
  const { restDf, restSumOfSquares } = space;
  gradient[0]! += restDf / residual - restSumOfSquares / residual ** 2;
  expected.values[0]! += restDf / residual ** 2;
  observed.values[0]! += (2 * restSumOfSquares) / residual ** 3 - restDf / residual ** 2;
  const deviance =
    logDeterminant(lower) +
    dotProduct(space.y, weighted) +
    restDf * Math.log(residual) +
    restSumOfSquares / residual;
  return { deviance, gradient, observed, expected };
}

function covarianceOf(space: ResidualSpace, variances: Float64Array): Matrix {
  const size = space.y.length;
  const covariance = zeroMatrix(size, size);
  for (let i = 0; i < size; i++) covariance.values[i * size + i] = variances[0]!;
  space.random.forEach((root, k) => {
    const variance = variances[k + 1]!;
    if (variance === 0) return;
    for (let c = 0; c < root.columns; c++) {
      const column = root.values.subarray(c * size, (c + 1) * size);
      for (let j = 0; j < size; j++) {
        const weight = variance * column[j]!;
        if (weight === 0) continue;
        for (let i = 0; i < size; i++) covariance.values[j * size + i]! += column[i]! * weight;
      }
    }
  });
  return covariance;
}

function transposeTimes(matrix: Matrix, vector: Float64Array): Float64Array {
  return Float64Array.from({ length: matrix.columns }, (_, j) =>
    dotProduct(matrix.values.subarray(j * matrix.rows, (j + 1) * matrix.rows), vector),
  );
}

function traceOf(root: Matrix, product: Matrix, isIdentity: boolean): number {
  if (!isIdentity) return dotProduct(root.values, product.values);
  let trace = 0;
  for (let i = 0; i < product.rows; i++) trace += product.values[i * product.rows + i]!;
  return trace;
}

function sumOfSquares(matrix: Matrix): number {
  return dotProduct(matrix.values, matrix.values);
}
