import {
  type Projection,
  project,
  projectColumns,
  projectionAt,
  type Spread,
  spreadTimes,
} from './covariance-structure.ts';
import { columnOf, crossProduct, dotProduct, gramMatrix, type Matrix, zeroMatrix } from './matrix.ts';

/** A mixed model of unit means, each times the root of its unit's size. */
export interface UnitModel {
  /** The independent columns of the fixed terms' matrix. */
  readonly x: Matrix;
  /** Residuals of the unit means from least squares on `x`. */
  readonly residuals: Float64Array;
  /** The residual first (ones), then the random terms. */
  readonly spreads: readonly Spread[];
  /** What varies within units, by the residual variance alone. */
  readonly withinDf: number;
  readonly withinSumOfSquares: number;
}

/** Minus twice the restricted log-likelihood at some variances, with its slopes. */
export interface RestrictedDeviance {
  /** log|V| + log|X' V^-1 X| + y' P y, without the constants. */
  readonly deviance: number;
  readonly gradient: Float64Array;
  /** Second derivatives as observed ... */
  readonly observed: Matrix;
  /** ... and as expected; the latter cannot be other than positive (semi)definite. */
  readonly expected: Matrix;
}

/**
 * The restricted deviance and its derivatives by the variances, the residual variance first: slopes
 * tr(P G_k) - y' P G_k P y, expected second derivatives tr(P G_i P G_j), observed ones
 * 2 y' P G_i P G_j P y - tr(P G_i P G_j). Null where V is not positive definite.
 *
 * Reference: Searle, Casella & McCulloch (1992) Variance Components, section 6.6.
 */
export function restrictedDeviance(model: UnitModel, variances: Float64Array): RestrictedDeviance | null {
  const residual = variances[0]!;
  if (!(residual > 0)) return null;
  const projection = projectionAt(model.x, model.spreads, variances);
  if (projection === null) return null;
  const projected = project(projection, model.residuals);
  const views = model.spreads.map((spread) => viewOf(projection, spread));
  const working = model.spreads.map((spread) => spreadTimes(spread, projected));
  const pulls = working.map((vector) => project(projection, vector));

  const count = variances.length;
  const gradient = new Float64Array(count);
  const observed = zeroMatrix(count, count);
  const expected = zeroMatrix(count, count);
  for (let i = 0; i < count; i++) {
    gradient[i] = views[i]!.trace - dotProduct(projected, working[i]!);
    for (let j = 0; j <= i; j++) {
      const trace = traceOfPair(projection, views[i]!, views[j]!);
      const bend = dotProduct(working[i]!, pulls[j]!);
      for (const at of [i * count + j, j * count + i]) {
        expected.values[at] = trace;
        observed.values[at] = 2 * bend - trace;
      }
    }
  }
  const { withinDf, withinSumOfSquares } = model;
  gradient[0]! += withinDf / residual - withinSumOfSquares / residual ** 2;
  expected.values[0]! += withinDf / residual ** 2;
  observed.values[0]! += (2 * withinSumOfSquares) / residual ** 3 - withinDf / residual ** 2;
  const fit = dotProduct(model.residuals, projected) + withinSumOfSquares / residual;
  const deviance = projection.logDeterminant + fit + withinDf * Math.log(residual);
  return { deviance, gradient, observed, expected };
}

/**
 * The share of a random term's spread that the fixed terms leave: 0 where its groups cannot be told apart
 * from them.
 */
export function shareLeft(model: UnitModel, term: number): number {
  const variances = Float64Array.from(model.spreads, (_, k) => (k === 0 ? 1 : 0));
  const projection = projectionAt(model.x, model.spreads, variances);
  const spread = model.spreads[term]!;
  if (projection === null) return 0;
  const whole =
    'diagonal' in spread
      ? spread.diagonal.reduce((sum, value) => sum + value, 0)
      : sumOfSquares(spread.indicators);
  return viewOf(projection, spread).trace / whole;
}

/** What the traces need of one spread G: tr(P G), and A' G A or P Z. */
type View = { readonly trace: number } & (
  | { readonly diagonal: Float64Array; readonly inner: Matrix; readonly rowSquares: Float64Array }
  | { readonly indicators: Matrix; readonly projected: Matrix }
);

function viewOf(projection: Projection, spread: Spread): View {
  if ('indicators' in spread) {
    const projected = projectColumns(projection, spread.indicators);
    return {
      trace: dotProduct(spread.indicators.values, projected.values),
      indicators: spread.indicators,
      projected,
    };
  }
  const { root, inverseDiagonal } = projection;
  const { diagonal } = spread;
  const rowSquares = new Float64Array(root.rows);
  for (let j = 0; j < root.columns; j++) {
    const column = columnOf(root, j);
    for (let i = 0; i < root.rows; i++) rowSquares[i]! += column[i]! * column[i]!;
  }
  const trace = diagonal.reduce((sum, size, i) => sum + size * (inverseDiagonal[i]! - rowSquares[i]!), 0);
  return { trace, diagonal, inner: gramMatrix(root, diagonal), rowSquares };
}

/** tr(P G_i P G_j). */
function traceOfPair({ inverseDiagonal }: Projection, left: View, right: View): number {
  if ('indicators' in left) {
    if ('indicators' in right) return sumOfSquares(crossProduct(left.indicators, right.projected));
    return weightedSquares(left.projected, right.diagonal);
  }
  if ('indicators' in right) return weightedSquares(right.projected, left.diagonal);
  let sum = dotProduct(left.inner.values, right.inner.values);
  for (let i = 0; i < inverseDiagonal.length; i++) {
    const d = inverseDiagonal[i]!;
    sum += left.diagonal[i]! * right.diagonal[i]! * d * (d - 2 * left.rowSquares[i]!);
  }
  return sum;
}

function weightedSquares(matrix: Matrix, weights: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < matrix.columns; j++) {
    columnOf(matrix, j).forEach((value, i) => (sum += weights[i]! * value * value));
  }
  return sum;
}

function sumOfSquares(matrix: Matrix): number {
  return dotProduct(matrix.values, matrix.values);
}
