import { columnOf, type Matrix } from './matrix.ts';

/** X = Q R for the columns that are independent, with what the others are made of. */
export interface QrFactors {
  readonly rows: number;
  readonly columns: number;
  /** Indexes of the columns independent of those before them. */
  readonly independent: readonly number[];
  /** The other columns, each with its weights on the independent columns before it. */
  readonly aliased: readonly { column: number; weights: Float64Array }[];
  /** Householder vectors; the k-th is zero above row k and of length sqrt(2). */
  readonly reflectors: readonly Float64Array[];
  /** Columns of the upper triangle R, one for each independent column. */
  readonly triangle: readonly Float64Array[];
}

/** A column whose length shrinks below this share of its own is a combination of those before it. */
const DEPENDENT = 1e-9;

/**
 * Householder QR that takes columns in their order and sets aside each one that depends linearly on
 * those before it, so that terms keep their order and aliasing is found.
 * Reference: Golub & Van Loan (2013) Matrix Computations, 4th ed., section 5.2; the order of columns
 * is kept as in LINPACK's dqrdc as modified for R.
 */
export function householderQr(x: Matrix, dependent = DEPENDENT): QrFactors {
  const independent: number[] = [];
  const aliased: { column: number; weights: Float64Array }[] = [];
  const reflectors: Float64Array[] = [];
  const triangle: Float64Array[] = [];
  for (let j = 0; j < x.columns; j++) {
    const column = Float64Array.from(columnOf(x, j));
    const before = lengthFrom(column, 0);
    reflectAll(reflectors, column);
    const rank = reflectors.length;
    const after = lengthFrom(column, rank);
    if (rank === x.rows || after <= dependent * before) {
      aliased.push({ column: j, weights: backSubstitute(triangle, column) });
      continue;
    }
    const head = column[rank]! > 0 ? -after : after;
    const reflector = new Float64Array(x.rows);
    for (let i = rank; i < x.rows; i++) reflector[i] = column[i]!;
    reflector[rank]! -= head;
    const scale = Math.SQRT2 / lengthFrom(reflector, rank);
    for (let i = rank; i < x.rows; i++) reflector[i]! *= scale;
    column[rank] = head;
    reflectors.push(reflector);
    triangle.push(column.slice(0, rank + 1));
    independent.push(j);
  }
  return { rows: x.rows, columns: x.columns, independent, aliased, reflectors, triangle };
}

/** Q' v: the first entries (as many as independent columns) are the effects, the rest the residual. */
export function rotate(qr: QrFactors, vector: ArrayLike<number>): Float64Array {
  const rotated = Float64Array.from(vector);
  reflectAll(qr.reflectors, rotated);
  return rotated;
}

/** Q v, the inverse of `rotate`. */
export function rotateBack(qr: QrFactors, vector: ArrayLike<number>): Float64Array {
  const rotated = Float64Array.from(vector);
  for (let k = qr.reflectors.length - 1; k >= 0; k--) reflect(qr.reflectors[k]!, k, rotated);
  return rotated;
}

/** Solves R b = the first entries of `effects`. */
export function solveTriangle(qr: QrFactors, effects: Float64Array): Float64Array {
  return backSubstitute(qr.triangle, effects);
}

/** The inverse of R, column by column (upper triangular). */
export function invertTriangle(qr: QrFactors): Float64Array[] {
  const rank = qr.triangle.length;
  return Array.from({ length: rank }, (_, j) => {
    const unit = new Float64Array(rank);
    unit[j] = 1;
    return backSubstitute(qr.triangle, unit);
  });
}

function backSubstitute(triangle: readonly Float64Array[], right: Float64Array): Float64Array {
  const solution = right.slice(0, triangle.length);
  for (let j = triangle.length - 1; j >= 0; j--) {
    const column = triangle[j]!;
    const value = solution[j]! / column[j]!;
    solution[j] = value;
    for (let i = 0; i < j; i++) solution[i]! -= column[i]! * value;
  }
  return solution;
}

function reflectAll(reflectors: readonly Float64Array[], vector: Float64Array): void {
  for (let k = 0; k < reflectors.length; k++) reflect(reflectors[k]!, k, vector);
}

function reflect(reflector: Float64Array, from: number, vector: Float64Array): void {
  let product = 0;
  for (let i = from; i < vector.length; i++) product += reflector[i]! * vector[i]!;
  if (product === 0) return;
  for (let i = from; i < vector.length; i++) vector[i]! -= product * reflector[i]!;
}

function lengthFrom(vector: Float64Array, from: number): number {
  let largest = 0;
  for (let i = from; i < vector.length; i++) largest = Math.max(largest, Math.abs(vector[i]!));
  if (largest === 0) return 0;
  let sum = 0;
  for (let i = from; i < vector.length; i++) sum += (vector[i]! / largest) ** 2;
  return largest * Math.sqrt(sum);
}
