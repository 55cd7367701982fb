import { columnOf, type Matrix, zeroMatrix } from './matrix.ts';

/** A pivot below this share of its diagonal entry means that the matrix is singular. */
const SINGULAR = 1e-13;

/**
 * The lower triangle L of a symmetric positive definite matrix, A = L L'; null where the matrix is
 * singular or not positive definite.
 * Reference: Golub & Van Loan (2013) Matrix Computations, 4th ed., algorithm 4.2.2.
 */
export function choleskyFactor(a: Matrix): Matrix | null {
  const size = a.rows;
  const lower = zeroMatrix(size, size);
  for (let j = 0; j < size; j++) {
    const target = columnOf(lower, j);
    const source = columnOf(a, j);
    for (let i = j; i < size; i++) target[i] = source[i]!;
    for (let k = 0; k < j; k++) {
      const earlier = columnOf(lower, k);
      const weight = earlier[j]!;
      if (weight === 0) continue;
      for (let i = j; i < size; i++) target[i]! -= earlier[i]! * weight;
    }
    const pivot = target[j]!;
    if (!(pivot > SINGULAR * source[j]!)) return null;
    const root = Math.sqrt(pivot);
    for (let i = j; i < size; i++) target[i]! /= root;
  }
  return lower;
}

/** The logarithm of the determinant of A from its triangle L. */
export function logDeterminant(lower: Matrix): number {
  let sum = 0;
  for (let j = 0; j < lower.rows; j++) sum += Math.log(lower.values[j * lower.rows + j]!);
  return 2 * sum;
}

/** Solves L x = b. */
export function solveLower(lower: Matrix, b: ArrayLike<number>): Float64Array {
  const x = Float64Array.from(b);
  for (let j = 0; j < lower.rows; j++) {
    const column = columnOf(lower, j);
    const value = x[j]! / column[j]!;
    x[j] = value;
    if (value === 0) continue;
    for (let i = j + 1; i < lower.rows; i++) x[i]! -= column[i]! * value;
  }
  return x;
}

/** Solves A x = b from the triangle L of A. */
export function choleskySolve(lower: Matrix, b: ArrayLike<number>): Float64Array {
  const x = solveLower(lower, b);
  for (let j = lower.rows - 1; j >= 0; j--) {
    const column = columnOf(lower, j);
    let value = x[j]!;
    for (let i = j + 1; i < lower.rows; i++) value -= column[i]! * x[i]!;
    x[j] = value / column[j]!;
  }
  return x;
}

/** The inverse of A from its triangle L. */
export function choleskyInverse(lower: Matrix): Matrix {
  const size = lower.rows;
  const inverse = zeroMatrix(size, size);
  const unit = new Float64Array(size);
  for (let j = 0; j < size; j++) {
    unit.fill(0);
    unit[j] = 1;
    columnOf(inverse, j).set(choleskySolve(lower, unit));
  }
  return inverse;
}
