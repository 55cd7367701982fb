import { columnOf, identityMatrix, type Matrix } from './matrix.ts';

export interface SymmetricEigen {
  /** Eigenvalues, largest first. */
  readonly values: number[];
  /** Orthonormal eigenvectors, in the order of the values. */
  readonly vectors: Float64Array[];
}

const SWEEPS = 60;

/**
 * Eigenvalues and eigenvectors of a symmetric matrix by cyclic Jacobi rotations: slower than other
 * ways for large matrices and more accurate for the small ones met here.
 * Reference: Golub & Van Loan (2013) Matrix Computations, 4th ed., section 8.5.
 */
export function symmetricEigen(a: Matrix): SymmetricEigen {
  const size = a.rows;
  const work: Matrix = { rows: size, columns: size, values: Float64Array.from(a.values) };
  const vectors = identityMatrix(size);
  for (let sweep = 0; sweep < SWEEPS && offDiagonal(work) > 0; sweep++) {
    for (let p = 0; p < size - 1; p++) {
      for (let q = p + 1; q < size; q++) rotatePair(work, vectors, p, q);
    }
  }
  const order = Array.from({ length: size }, (_, i) => i);
  order.sort((i, j) => work.values[j * size + j]! - work.values[i * size + i]!);
  return {
    values: order.map((i) => work.values[i * size + i]!),
    vectors: order.map((i) => Float64Array.from(columnOf(vectors, i))),
  };
}

/** The sum of squares off the diagonal, or 0 once it no longer counts beside the diagonal. */
function offDiagonal(a: Matrix): number {
  let off = 0;
  let on = 0;
  for (let j = 0; j < a.rows; j++) {
    for (let i = 0; i < a.rows; i++) {
      const square = a.values[j * a.rows + i]! ** 2;
      if (i === j) on += square;
      else off += square;
    }
  }
  return off <= 1e-32 * on ? 0 : off;
}

function rotatePair(a: Matrix, vectors: Matrix, p: number, q: number): void {
  const size = a.rows;
  const apq = a.values[q * size + p]!;
  if (apq === 0) return;
  const theta = (a.values[q * size + q]! - a.values[p * size + p]!) / (2 * apq);
  const tangent = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1));
  const cosine = 1 / Math.hypot(tangent, 1);
  const sine = tangent * cosine;
  turn(columnOf(a, p), columnOf(a, q), cosine, sine);
  for (let i = 0; i < size; i++) {
    const left = a.values[i * size + p]!;
    const right = a.values[i * size + q]!;
    a.values[i * size + p] = cosine * left - sine * right;
    a.values[i * size + q] = sine * left + cosine * right;
  }
  turn(columnOf(vectors, p), columnOf(vectors, q), cosine, sine);
}

function turn(left: Float64Array, right: Float64Array, cosine: number, sine: number): void {
  for (let i = 0; i < left.length; i++) {
    const a = left[i]!;
    const b = right[i]!;
    left[i] = cosine * a - sine * b;
    right[i] = sine * a + cosine * b;
  }
}
