import { choleskyFactor, choleskyInverse, choleskySolve, logDeterminant } from '../linear-model/cholesky.ts';
import {
  columnOf,
  dotProduct,
  type Matrix,
  matrixProduct,
  matrixTimesVector,
  quadraticForm,
  zeroMatrix,
} from '../linear-model/matrix.ts';
import type { RestrictedDeviance } from '../linear-model/restricted-likelihood.ts';
import type { TwoWayCell } from './additive-set.ts';

/** A table of rows (fixed) by columns (random); `incidence` is 1 where a cell is filled. */
export interface RandomColumns {
  readonly incidence: Matrix;
  readonly rowCounts: Float64Array;
  readonly columnCounts: Float64Array;
  readonly cells: readonly TwoWayCell[];
}

export interface RandomColumnsFit extends RestrictedDeviance {
  readonly rowMeans: Float64Array;
  readonly covariance: Matrix;
  /** Derivatives of the covariance by the residual and by the column variance. */
  readonly derivatives: readonly Matrix[];
}

/**
 * Value = row + random column + residual: generalised least squares of the rows at given variances (the
 * residual's, the columns') and minus twice the restricted log-likelihood with its derivatives. Columns are
 * independent of one another, so that all is had from matrices as large as the rows or the columns, and
 * from P V P = P for what concerns the residual. Null where the variances allow no solution.
 *
 * Reference: Searle, Casella & McCulloch (1992) Variance Components, sections 3.7 and 6.6.
 */
export function randomColumnsLikelihood(
  table: RandomColumns,
  variances: Float64Array,
): RandomColumnsFit | null {
  const { incidence, rowCounts, columnCounts, cells } = table;
  const residual = variances[0]!;
  const between = variances[1]!;
  if (!(residual > 0)) return null;
  const rows = incidence.rows;
  const spread = columnCounts.map((count) => residual + count * between);
  const shrink = spread.map((value) => between / value);
  const lower = choleskyFactor(
    weighted(
      incidence,
      shrink.map((value) => -value / residual),
      rowCounts.map((count) => count / residual),
    ),
  );
  if (lower === null) return null;
  const covariance = choleskyInverse(lower);
  const inverseTimes = (values: readonly number[]) => inverseOnCells(cells, values, shrink, residual);
  const right = new Float64Array(rows);
  inverseTimes(cells.map(({ value }) => value)).forEach((value, k) => (right[cells[k]!.row]! += value));
  const rowMeans = choleskySolve(lower, right);
  const deviations = cells.map(({ row, value }) => value - rowMeans[row]!);
  const projected = inverseTimes(deviations);

  // Of Z' P Z, as large as the columns, only the trace, the squares and a form are needed: it is a diagonal
  // less S' C S, with C the covariance and S the incidence over each column's spread.
  const diagonal = columnCounts.map((count, j) => count / spread[j]!);
  const scaled = {
    ...incidence,
    values: incidence.values.map((value, k) => value / spread[Math.floor(k / rows)]!),
  };
  const half = matrixProduct(covariance, scaled);
  const less = diagonal.map((_, j) => dotProduct(columnOf(scaled, j), columnOf(half, j)));
  const ofColumns = weighted(
    incidence,
    spread.map((value) => 1 / value ** 2),
    new Float64Array(rows),
  );
  const turned = matrixProduct(covariance, ofColumns);
  const innerSquares =
    dotProduct(diagonal, diagonal) - 2 * dotProduct(diagonal, less) + traceOfSquare(turned);
  const columnSums = new Float64Array(incidence.columns);
  projected.forEach((value, k) => (columnSums[cells[k]!.column]! += value));
  const rowSums = matrixTimesVector(scaled, columnSums);
  const innerForm =
    columnSums.reduce((total, value, j) => total + diagonal[j]! * value * value, 0) -
    quadraticForm(rowSums, covariance, rowSums);
  const trace = diagonal.reduce((total, value, j) => total + value - less[j]!, 0);
  const form = sum(projected.map((value, k) => value * deviations[k]!));
  const slopes = (whole: number, part: number) => [(whole - between * part) / residual, part] as const;
  const columnForm = dotProduct(columnSums, columnSums);
  const [traceResidual, traceColumns] = slopes(cells.length - rows, trace);
  const squares = sum(projected.map((value) => value * value));
  const traces = pairs(traceResidual, traceColumns, innerSquares, between, residual);
  const bends = pairs(squares, columnForm, innerForm, between, residual);
  const logSpread = columnCounts.reduce(
    (total, count, j) => total + Math.log(spread[j]!) + (count - 1) * Math.log(residual),
    0,
  );
  return {
    deviance: logSpread + logDeterminant(lower) + form,
    gradient: Float64Array.of(traceResidual - squares, traceColumns - columnForm),
    expected: { rows: 2, columns: 2, values: traces },
    observed: { rows: 2, columns: 2, values: bends.map((value, k) => 2 * value - traces[k]!) },
    rowMeans,
    covariance,
    derivatives: [
      weighted(
        incidence,
        columnCounts.map((count, j) => (count * shrink[j]! ** 2 - 2 * shrink[j]!) / residual ** 2),
        rowCounts.map((count) => count / residual ** 2),
      ),
      ofColumns,
    ].map((middle) => matrixProduct(covariance, matrixProduct(middle, covariance))),
  };
}

/** From the single forms with I and G and the double form with G, G: the double ones with I, as P V P = P. */
function pairs(
  single: number,
  singleColumns: number,
  columns: number,
  between: number,
  residual: number,
): Float64Array {
  const mixed = (singleColumns - between * columns) / residual;
  const both = (single - between * mixed) / residual;
  return Float64Array.of(both, mixed, mixed, columns);
}

/** The trace of A A. */
function traceOfSquare({ rows, values }: Matrix): number {
  let trace = 0;
  for (let a = 0; a < rows; a++) {
    for (let b = 0; b < rows; b++) trace += values[b * rows + a]! * values[a * rows + b]!;
  }
  return trace;
}

/** diag(d) + N diag(w) N'. */
function weighted(incidence: Matrix, weights: Float64Array, diagonal: Float64Array): Matrix {
  const size = incidence.rows;
  const result = zeroMatrix(size, size);
  for (let j = 0; j < incidence.columns; j++) {
    const column = columnOf(incidence, j);
    for (let a = 0; a < size; a++) {
      const share = column[a]! * weights[j]!;
      if (share === 0) continue;
      for (let b = 0; b < size; b++) result.values[a * size + b]! += share * column[b]!;
    }
  }
  diagonal.forEach((value, i) => (result.values[i * size + i]! += value));
  return result;
}

/** V^-1 times a list with one number for each cell. */
function inverseOnCells(
  cells: readonly TwoWayCell[],
  values: readonly number[],
  shrink: Float64Array,
  residual: number,
): number[] {
  const sums = new Float64Array(shrink.length);
  values.forEach((value, k) => (sums[cells[k]!.column]! += value));
  return values.map((value, k) => (value - shrink[cells[k]!.column]! * sums[cells[k]!.column]!) / residual);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
