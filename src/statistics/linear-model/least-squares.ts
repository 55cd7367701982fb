import { meanOf } from '../mean.ts';
import { type FixedEffects, NO_DEGREES_OF_FREEDOM, NO_VARIATION } from './fixed-effects.ts';
import {
  householderQr,
  invertTriangle,
  type QrFactors,
  rotate,
  rotateBack,
  solveTriangle,
} from './householder-qr.ts';
import { columnOf, identityMatrix, type Matrix, zeroMatrix } from './matrix.ts';
import { roundingNoise } from './rounding-noise.ts';

export interface LeastSquares extends FixedEffects {
  readonly rank: number;
  readonly fitted: Float64Array;
  readonly residuals: Float64Array;
  /** Diagonal of the matrix that turns responses into fitted values; near 1: fitted by itself. */
  readonly leverages: Float64Array;
  readonly residualDf: number;
  readonly residualSumOfSquares: number;
  /** Null where no degrees of freedom are left. */
  readonly residualMeanSquare: number | null;
}

/**
 * Ordinary or weighted least squares of responses on the columns of a model matrix. Columns that depend
 * on those before them get coefficient 0 and are listed in `dependencies`. A first column of ones is the
 * intercept: the responses are then centred first. With weights (inverse variances up to a factor), the
 * residual sum of squares is weighted; fitted values and residuals are not.
 *
 * Reference: Seber & Lee (2003) Linear Regression Analysis, 2nd ed., chapters 3 and 11.
 */
export function leastSquares(
  x: Matrix,
  responses: readonly number[],
  weights?: readonly number[],
): LeastSquares {
  if (responses.length !== x.rows) {
    throw new Error(`leastSquares requires ${x.rows} responses, not ${responses.length}`);
  }
  if (weights?.some((weight) => !(weight > 0))) throw new Error('leastSquares requires weights above 0');
  const roots = weights?.map(Math.sqrt);
  const intercept = x.columns > 0 && columnOf(x, 0).every((value) => value === 1);
  const centre = intercept ? meanOf(responses) : 0;
  const centred = responses.map((value) => value - centre);
  const qr = householderQr(roots ? scaleRows(x, roots) : x);
  const rank = qr.independent.length;
  const effects = rotate(qr, roots ? centred.map((value, i) => value * roots[i]!) : centred);
  const coefficients = new Float64Array(x.columns);
  solveTriangle(qr, effects).forEach((value, k) => {
    coefficients[qr.independent[k]!] = value;
  });
  if (intercept) coefficients[0]! += centre;

  const residualEffects = effects.map((value, i) => (i < rank ? 0 : value));
  const scaledResiduals = rotateBack(qr, residualEffects);
  const residuals = scaledResiduals.map((value, i) => value / (roots?.[i] ?? 1));
  const residualDf = x.rows - rank;
  const residualSumOfSquares = residualEffects.reduce((total, value) => total + value * value, 0);
  const residualMeanSquare = residualDf > 0 ? residualSumOfSquares / residualDf : null;
  const unscaled = inverseCrossProduct(qr);
  const lacking =
    residualMeanSquare === null
      ? NO_DEGREES_OF_FREEDOM
      : residualSumOfSquares <= roundingNoise(responses)
        ? NO_VARIATION
        : null;
  return {
    coefficients,
    covariance: scaled(unscaled, residualMeanSquare ?? 0),
    dependencies: dependenciesOf(qr),
    derivatives: [unscaled],
    varianceCovariance: lacking
      ? null
      : scaled(identityMatrix(1), (2 * residualMeanSquare! ** 2) / residualDf),
    withoutError: lacking ? [{ share: unscaled, reason: lacking }] : [],
    rank,
    fitted: residuals.map((value, i) => responses[i]! - value),
    residuals,
    leverages: leveragesOf(qr),
    residualDf,
    residualSumOfSquares,
    residualMeanSquare,
  };
}

/** (X'X)^-1 over the independent columns, zero elsewhere. */
export function inverseCrossProduct(qr: QrFactors): Matrix {
  const inverse = invertTriangle(qr);
  const result = zeroMatrix(qr.columns, qr.columns);
  for (let a = 0; a < inverse.length; a++) {
    for (let b = 0; b <= a; b++) {
      let sum = 0;
      for (let k = a; k < inverse.length; k++) sum += inverse[k]![a]! * inverse[k]![b]!;
      const [i, j] = [qr.independent[a]!, qr.independent[b]!];
      result.values[j * qr.columns + i] = sum;
      result.values[i * qr.columns + j] = sum;
    }
  }
  return result;
}

/** For each dependent column, the combination of columns that is zero at every row. */
export function dependenciesOf(qr: QrFactors): Float64Array[] {
  return qr.aliased.map(({ column, weights }) => {
    const combination = new Float64Array(qr.columns);
    combination[column] = 1;
    weights.forEach((weight, k) => {
      combination[qr.independent[k]!] = -weight;
    });
    return combination;
  });
}

/** Each row of a matrix multiplied by a number. */
export function scaleRows(x: Matrix, factors: ArrayLike<number>): Matrix {
  return {
    rows: x.rows,
    columns: x.columns,
    values: x.values.map((value, k) => value * factors[k % x.rows]!),
  };
}

function leveragesOf(qr: QrFactors): Float64Array {
  const leverages = new Float64Array(qr.rows);
  const unit = new Float64Array(qr.rows);
  for (let k = 0; k < qr.independent.length; k++) {
    unit.fill(0);
    unit[k] = 1;
    rotateBack(qr, unit).forEach((value, i) => {
      leverages[i]! += value * value;
    });
  }
  return leverages;
}

function scaled(matrix: Matrix, factor: number): Matrix {
  return { ...matrix, values: matrix.values.map((value) => value * factor) };
}
