import { fTestOfContrasts } from './f-test-of-contrasts.ts';
import { type LeastSquares, leastSquares } from './least-squares.ts';
import type { ModelTerms } from './model-terms.ts';
import { type TermTest, termTests, testableContrasts } from './term-tests.ts';

export interface TypeThreeRow extends TermTest {
  /** Null where the term cannot be estimated beside the others. */
  readonly sumOfSquares: number | null;
  readonly meanSquare: number | null;
}

export interface TypeThreeAnalysis {
  readonly rows: readonly TypeThreeRow[];
  readonly residual: {
    readonly df: number;
    readonly sumOfSquares: number;
    readonly meanSquare: number | null;
  };
  readonly fit: LeastSquares;
}

/**
 * Analysis of variance of a model of fixed terms, whether balanced or not: each term after all others
 * (Type III, contrasts that sum to zero), tested against the residual. For completely randomised designs,
 * blocks and Latin squares with plots missing, and factorials of unequal numbers.
 *
 * Reference: Searle (1987) Linear Models for Unbalanced Data, chapters 4, 9 and 12.
 */
export function analysisOfVarianceTypeThree(
  model: ModelTerms,
  responses: readonly number[],
  weights?: readonly number[],
): TypeThreeAnalysis {
  const fit = leastSquares(model.matrix, responses, weights);
  const unscaled = { ...fit, covariance: fit.derivatives[0]! };
  const rows = termTests(fit, model).map((test, t) => {
    const testable =
      test.df > 0 && (test.f !== null || fit.withoutError.some(({ reason }) => reason === test.reason));
    const whole = testable ? fTestOfContrasts(unscaled, testableContrasts(fit, model.terms[t]!)) : null;
    const sumOfSquares = whole === null ? null : whole.f * whole.df;
    return { ...test, sumOfSquares, meanSquare: sumOfSquares === null ? null : sumOfSquares / test.df };
  });
  return {
    rows,
    residual: {
      df: fit.residualDf,
      sumOfSquares: fit.residualSumOfSquares,
      meanSquare: fit.residualMeanSquare,
    },
    fit,
  };
}
