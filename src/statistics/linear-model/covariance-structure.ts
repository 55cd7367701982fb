import { choleskyFactor, logDeterminant, solveLower } from './cholesky.ts';
import {
  columnOf,
  dotProduct,
  gramMatrix,
  type Matrix,
  matrixFromColumns,
  matrixTimesVector,
  zeroMatrix,
} from './matrix.ts';

/**
 * What one variance spreads over the units: a number for each unit where its groups are the units
 * themselves, otherwise indicator columns (rows times the root of the unit's size).
 */
export type Spread = { readonly diagonal: Float64Array } | { readonly indicators: Matrix };

/** P = V^-1 - V^-1 X (X' V^-1 X)^-1 X' V^-1, kept as D^-1 - A A' with D diagonal. */
export interface Projection {
  readonly inverseDiagonal: Float64Array;
  /** A, one row for each unit and a column for each fixed column and each group. */
  readonly root: Matrix;
  /** log|V| + log|X' V^-1 X|. */
  readonly logDeterminant: number;
}

/**
 * The projection that frees responses of the fixed terms, for V = sum of variances times their spreads.
 * Indicators join the columns of X in one least-squares system, ridged by 1 for the former, so that no
 * matrix as large as the units is formed. Null where V is not positive definite.
 *
 * Reference: Searle, Casella & McCulloch (1992) Variance Components, section 7.6 (Henderson's equations).
 */
export function projectionAt(
  x: Matrix,
  spreads: readonly Spread[],
  variances: Float64Array,
): Projection | null {
  const diagonal = new Float64Array(x.rows);
  const columns = Array.from({ length: x.columns }, (_, j) => columnOf(x, j));
  spreads.forEach((spread, k) => {
    const variance = variances[k]!;
    if (variance === 0) return;
    if ('diagonal' in spread) spread.diagonal.forEach((size, i) => (diagonal[i]! += size * variance));
    else {
      const root = Math.sqrt(variance);
      for (let j = 0; j < spread.indicators.columns; j++) {
        columns.push(columnOf(spread.indicators, j).map((value) => value * root));
      }
    }
  });
  if (!diagonal.every((value) => value > 0)) return null;
  const inverseDiagonal = diagonal.map((value) => 1 / value);
  const roots = inverseDiagonal.map(Math.sqrt);
  const scaled = matrixFromColumns(
    x.rows,
    columns.map((column) => column.map((value, i) => value * roots[i]!)),
  );
  const inner = gramMatrix(scaled);
  for (let k = x.columns; k < inner.rows; k++) inner.values[k * inner.rows + k]! += 1;
  const lower = choleskyFactor(inner);
  if (lower === null) return null;
  const root = zeroMatrix(x.rows, columns.length);
  const row = new Float64Array(columns.length);
  for (let i = 0; i < x.rows; i++) {
    for (let k = 0; k < columns.length; k++) row[k] = columns[k]![i]!;
    solveLower(lower, row).forEach((value, k) => {
      root.values[k * x.rows + i] = value * inverseDiagonal[i]!;
    });
  }
  const logDiagonal = diagonal.reduce((sum, value) => sum + Math.log(value), 0);
  return { inverseDiagonal, root, logDeterminant: logDiagonal + logDeterminant(lower) };
}

/** P v. */
export function project(projection: Projection, vector: Float64Array): Float64Array {
  const { root, inverseDiagonal } = projection;
  const weights = Float64Array.from({ length: root.columns }, (_, k) =>
    dotProduct(columnOf(root, k), vector),
  );
  const taken = matrixTimesVector(root, weights);
  return taken.map((value, i) => inverseDiagonal[i]! * vector[i]! - value);
}

/** P Z, column by column. */
export function projectColumns(projection: Projection, z: Matrix): Matrix {
  return matrixFromColumns(
    z.rows,
    Array.from({ length: z.columns }, (_, j) => project(projection, columnOf(z, j))),
  );
}

/** G v, for the spread G of one variance. */
export function spreadTimes(spread: Spread, vector: Float64Array): Float64Array {
  if ('diagonal' in spread) return vector.map((value, i) => value * spread.diagonal[i]!);
  const { indicators } = spread;
  const sums = Float64Array.from({ length: indicators.columns }, (_, j) =>
    dotProduct(columnOf(indicators, j), vector),
  );
  return matrixTimesVector(indicators, sums);
}
