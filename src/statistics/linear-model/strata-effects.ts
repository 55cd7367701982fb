import { type FixedEffects, NO_DEGREES_OF_FREEDOM, NO_VARIATION } from './fixed-effects.ts';
import { householderQr, rotate, solveTriangle } from './householder-qr.ts';
import { dependenciesOf, inverseCrossProduct } from './least-squares.ts';
import { type Matrix, zeroMatrix } from './matrix.ts';
import type { ModelTerms } from './model-terms.ts';
import type { StratumAnalysis } from './stratum-analysis.ts';

export interface StrataEstimation {
  readonly model: ModelTerms;
  /** Columns of the model matrix that belong to the intercept and the blocks. */
  readonly baseColumns: number;
  /** The model matrix and the units' mean responses about `centre`, both times the root of unit sizes. */
  readonly scaled: Matrix;
  readonly scaledMeans: Float64Array;
  readonly centre: number;
  /** The strata that have dimensions, coarsest first. */
  readonly analyses: readonly StratumAnalysis[];
  /** Sums of squares at or below this are rounding noise. */
  readonly noise: number;
}

/**
 * The coefficients of a balanced design with strata: those of least squares, each with the variance of
 * the stratum in which its term is estimated, intercept and blocks with that of the coarsest (blocks are
 * fixed, so that their own variance is left out). Mean squares are independent with sampling variance
 * 2 MS^2 / df, from which a contrast across strata gets Satterthwaite's degrees of freedom. This holds
 * as well where a variance component comes out negative.
 */
export function strataEffects(estimation: StrataEstimation): FixedEffects {
  const { model, scaled, analyses } = estimation;
  const qr = householderQr(scaled);
  const coefficients = new Float64Array(scaled.columns);
  solveTriangle(qr, rotate(qr, estimation.scaledMeans)).forEach((value, k) => {
    coefficients[qr.independent[k]!] = value;
  });
  coefficients[0]! += estimation.centre;
  const unscaled = inverseCrossProduct(qr);
  const stratumOf = stratumOfColumns(model, estimation.baseColumns, analyses);
  const shares = analyses.map((_, s) => maskedBy(unscaled, stratumOf, s));
  const lacking = analyses.map((analysis) => {
    if (analysis.errorDf === 0) return NO_DEGREES_OF_FREEDOM;
    return analysis.errorSumOfSquares <= estimation.noise ? NO_VARIATION : null;
  });
  const covariance = zeroMatrix(scaled.columns, scaled.columns);
  const usable = analyses.flatMap((analysis, s) => {
    if (lacking[s] !== null) return [];
    const meanSquare = analysis.errorSumOfSquares / analysis.errorDf;
    shares[s]!.values.forEach((value, k) => (covariance.values[k]! += value * meanSquare));
    return [{ share: shares[s]!, sampling: (2 * meanSquare * meanSquare) / analysis.errorDf }];
  });
  const varianceCovariance = zeroMatrix(usable.length, usable.length);
  usable.forEach(({ sampling }, k) => {
    varianceCovariance.values[k * usable.length + k] = sampling;
  });
  return {
    coefficients,
    covariance,
    dependencies: dependenciesOf(qr),
    derivatives: usable.map(({ share }) => share),
    varianceCovariance,
    withoutError: lacking.flatMap((reason, s) => (reason === null ? [] : [{ share: shares[s]!, reason }])),
  };
}

function stratumOfColumns(
  model: ModelTerms,
  baseColumns: number,
  analyses: readonly StratumAnalysis[],
): number[] {
  const stratumOf = new Array<number>(model.matrix.columns).fill(0);
  for (const term of model.terms) {
    if (term.start < baseColumns) continue;
    const stratum = analyses.findIndex(({ terms }) => terms.some((found) => found.term === term.name));
    stratumOf.fill(Math.max(stratum, 0), term.start, term.start + term.count);
  }
  return stratumOf;
}

function maskedBy(matrix: Matrix, stratumOf: readonly number[], stratum: number): Matrix {
  const masked = zeroMatrix(matrix.rows, matrix.columns);
  for (let j = 0; j < matrix.columns; j++) {
    for (let i = 0; i < matrix.rows; i++) {
      if (stratumOf[i] !== stratum || stratumOf[j] !== stratum) continue;
      masked.values[j * matrix.rows + i] = matrix.values[j * matrix.rows + i]!;
    }
  }
  return masked;
}
