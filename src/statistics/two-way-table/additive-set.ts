import { choleskyFactor, choleskyInverse } from '../linear-model/cholesky.ts';
import { entryOf, type Matrix, matrixTimesVector, zeroMatrix } from '../linear-model/matrix.ts';
import { sum } from '../sum.ts';

/** A filled cell of a two-way table; its weight is an inverse variance up to a factor. */
export interface TwoWayCell {
  readonly row: number;
  readonly column: number;
  readonly value: number;
  readonly weight?: number;
}

/** Row + column fitted to one linked set of a table. Lists are in the order of `rows` and `columns`. */
export interface AdditiveSet {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  /** Adjusted means of the rows over the set's columns with equal weights, and of the columns over its rows. */
  readonly rowMeans: Float64Array;
  readonly columnMeans: Float64Array;
  /** Covariance of the row means for a residual variance of 1. */
  readonly unscaledCovariance: Matrix;
  /** One for each cell given, in its order. */
  readonly residuals: Float64Array;
  readonly residualSumOfSquares: number;
  /** Sums of squares of rows after columns and of columns after rows. */
  readonly rowSumOfSquares: number;
  readonly columnSumOfSquares: number;
}

/**
 * Weighted least squares of row + column on the cells of one linked set. Columns are swept out and the
 * rows' reduced equations solved, so that the work grows with the cells and the rows alone.
 *
 * Reference: John & Williams (1995) Cyclic and Computer Generated Designs, 2nd ed., section 1.3 (the
 * information matrix of a block design).
 */
export function additiveSet(
  cells: readonly TwoWayCell[],
  rows: readonly number[],
  columns: readonly number[],
): AdditiveSet {
  const rowAt = new Map(rows.map((row, i) => [row, i]));
  const columnAt = new Map(columns.map((column, j) => [column, j]));
  const at = cells.map(({ row, column }) => [rowAt.get(row)!, columnAt.get(column)!] as const);
  const weights = cells.map(({ weight }) => weight ?? 1);
  const centre = sum(cells.map(({ value }) => value)) / cells.length;
  const values = cells.map(({ value }) => value - centre);

  const incidence = zeroMatrix(rows.length, columns.length);
  at.forEach(([i, j], k) => (incidence.values[j * rows.length + i] = weights[k]!));
  const rowWeights = new Float64Array(rows.length);
  const columnWeights = new Float64Array(columns.length);
  const rowTotals = new Float64Array(rows.length);
  const columnTotals = new Float64Array(columns.length);
  at.forEach(([i, j], k) => {
    rowWeights[i]! += weights[k]!;
    columnWeights[j]! += weights[k]!;
    rowTotals[i]! += weights[k]! * values[k]!;
    columnTotals[j]! += weights[k]! * values[k]!;
  });
  const rawColumnMeans = columnTotals.map((total, j) => total / columnWeights[j]!);
  const rawRowMeans = rowTotals.map((total, i) => total / rowWeights[i]!);

  const inverse = rowInformationInverse(incidence, rowWeights, columnWeights);
  const adjusted = new Float64Array(rows.length);
  at.forEach(([i, j], k) => (adjusted[i]! += weights[k]! * (values[k]! - rawColumnMeans[j]!)));
  const rowEffects = matrixTimesVector(inverse, adjusted);
  const columnEffects = rawColumnMeans.slice();
  at.forEach(([i, j], k) => (columnEffects[j]! -= (weights[k]! * rowEffects[i]!) / columnWeights[j]!));

  const fitted = at.map(([i, j]) => rowEffects[i]! + columnEffects[j]!);
  const squares = (of: (k: number) => number) => sum(cells.map((_, k) => weights[k]! * of(k) ** 2));
  const level = sum(columnEffects) / columns.length;
  const rowLevel = sum(rowEffects) / rows.length;
  return {
    rows,
    columns,
    rowMeans: rowEffects.map((effect) => centre + effect + level),
    columnMeans: columnEffects.map((effect) => centre + effect + rowLevel),
    unscaledCovariance: meanCovariance(inverse, incidence, columnWeights),
    residuals: Float64Array.from(values, (value, k) => value - fitted[k]!),
    residualSumOfSquares: squares((k) => values[k]! - fitted[k]!),
    rowSumOfSquares: squares((k) => fitted[k]! - rawColumnMeans[at[k]![1]]!),
    columnSumOfSquares: squares((k) => fitted[k]! - rawRowMeans[at[k]![0]]!),
  };
}

/** The inverse, on contrasts between rows, of diag(row weights) - N diag(1 / column weights) N'. */
function rowInformationInverse(
  incidence: Matrix,
  rowWeights: Float64Array,
  columnWeights: Float64Array,
): Matrix {
  const size = incidence.rows;
  const information = zeroMatrix(size, size);
  for (let j = 0; j < incidence.columns; j++) {
    for (let a = 0; a < size; a++) {
      const share = entryOf(incidence, a, j) / columnWeights[j]!;
      if (share === 0) continue;
      for (let b = 0; b < size; b++) information.values[a * size + b]! -= share * entryOf(incidence, b, j);
    }
  }
  // The rows' sum carries no information: a constant added there makes the matrix regular, and is taken off again.
  const filler = rowWeights.reduce((total, weight) => total + weight, 0) / (size * size);
  for (let i = 0; i < size; i++) information.values[i * size + i]! += rowWeights[i]!;
  for (let k = 0; k < information.values.length; k++) information.values[k]! += filler;
  const lower = choleskyFactor(information);
  if (lower === null) throw new Error('additiveSet requires rows and columns that the cells link');
  const inverse = choleskyInverse(lower);
  const constant = 1 / (filler * size * size);
  return { ...inverse, values: inverse.values.map((value) => value - constant) };
}

/** Covariance of row effect + mean column effect, the column effects being column means less row effects. */
function meanCovariance(inverse: Matrix, incidence: Matrix, columnWeights: Float64Array): Matrix {
  const size = inverse.rows;
  const columns = incidence.columns;
  const shares = new Float64Array(size);
  let level = 0;
  for (let j = 0; j < columns; j++) {
    level += 1 / (columns * columns * columnWeights[j]!);
    for (let i = 0; i < size; i++) shares[i]! += entryOf(incidence, i, j) / (columns * columnWeights[j]!);
  }
  const lean = matrixTimesVector(inverse, shares);
  const own = lean.reduce((total, value, i) => total + value * shares[i]!, 0);
  const covariance = zeroMatrix(size, size);
  for (let a = 0; a < size; a++) {
    for (let b = 0; b < size; b++) {
      covariance.values[b * size + a] = entryOf(inverse, a, b) - lean[a]! - lean[b]! + own + level;
    }
  }
  return covariance;
}
