import { say } from '../../model/say.ts';
import { analysisOfVarianceTypeThree } from '../../statistics/linear-model/analysis-of-variance-type-three.ts';
import { withConfoundedGroups } from '../../statistics/linear-model/confounded-groups.ts';
import { modelTerms } from '../../statistics/linear-model/model-terms.ts';
import { restrictedMaximumLikelihood } from '../../statistics/linear-model/restricted-maximum-likelihood.ts';
import { type TermTest, termTests } from '../../statistics/linear-model/term-tests.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import { confoundedStrata } from './confounded-strata.ts';
import { stratumOf } from './error-degrees.ts';
import { type AnovaRow, type FittedModel, residualRow } from './fitted-model.ts';

/**
 * The fitted model of a design that is not balanced. With one error it is least squares; with several, REML.
 * Tests are of Type III with sum-to-zero contrasts. A mixed model has no sums of squares of its own: its lines
 * show F x df x the residual variance, on the observations' scale.
 */
export function fitByLikelihood(
  design: AnalysisDesign,
  degrees: ReadonlyMap<string, number>,
): FittedModel | { reason: string } {
  const random = design.errors.strata.filter(({ name }) => degrees.get(name)! > 0);
  const fit = random.length === 0 ? byLeastSquares(design) : byReml(design, degrees, random);
  if ('reason' in fit) return fit;
  const { matrix } = modelTerms(design.observations.length, design.factors, fixedTerms(design));
  const effects = confoundedStrata(design).reduce(
    (marked, { groups }) => withConfoundedGroups(marked, matrix, groups),
    fit.effects,
  );
  return { ...fit, effects };
}

function byLeastSquares(design: AnalysisDesign): FittedModel {
  const responses = design.observations.map(({ value }) => value);
  const model = modelTerms(responses.length, design.factors, fixedTerms(design));
  const { fit, rows } = analysisOfVarianceTypeThree(model, responses);
  const { residual } = design.errors;
  const anova = rows.map((row) => rowOf(design, residual, row, row.meanSquare));
  if (fit.residualDf > 0) anova.push(residualRow(residual, fit.residualDf, fit.residualSumOfSquares));
  return {
    method: 'analysis of variance',
    why: 'not balanced, with one error, so by least squares and Type III tests',
    model,
    effects: fit,
    anova,
    varianceComponents: [
      {
        term: residual,
        variance: fit.residualMeanSquare,
        ...(fit.residualMeanSquare === null
          ? { reason: say('no degrees of freedom are left to estimate it') }
          : {}),
      },
    ],
  };
}

function byReml(
  design: AnalysisDesign,
  degrees: ReadonlyMap<string, number>,
  random: AnalysisDesign['errors']['strata'],
): FittedModel | { reason: string } {
  const fit = restrictedMaximumLikelihood({
    responses: design.observations.map(({ value }) => value),
    factors: design.factors,
    fixed: fixedTerms(design),
    random,
    residual: design.errors.residual,
  });
  if ('reason' in fit) return fit;
  const residualVariance = fit.components.at(-1)!.variance;
  const tests = termTests(fit.effects, fit.model, greatestDegrees(design, degrees));
  return {
    method: 'mixed model',
    why: "not balanced, with several errors, so by REML and Satterthwaite's degrees of freedom",
    model: fit.model,
    effects: fit.effects,
    anova: tests.map((test) =>
      rowOf(design, random[0]!.name, test, test.f === null ? null : test.f * residualVariance),
    ),
    varianceComponents: fit.components.map(({ term, variance, atZero }) => ({
      term,
      variance,
      ...(atZero ? { reason: say('estimated at zero, its bound') } : {}),
    })),
  };
}

function fixedTerms(design: AnalysisDesign): (readonly string[])[] {
  return [...design.blocks, ...design.terms.map(({ factors }) => factors)];
}

/** By term, the error degrees of freedom of the stratum of its own unit. */
function greatestDegrees(
  design: AnalysisDesign,
  degrees: ReadonlyMap<string, number>,
): Record<string, number> {
  return Object.fromEntries(
    design.terms.map(({ name, unit }) => [name, degrees.get(stratumOf(design, unit))!]),
  );
}

/** Blocks stand against the coarsest error. */
function rowOf(
  design: AnalysisDesign,
  coarsest: string,
  test: TermTest,
  meanSquare: number | null,
): AnovaRow {
  const term = design.terms.find(({ name }) => name === test.term);
  return {
    term: test.term,
    df: test.df,
    sum_of_squares: meanSquare === null ? null : meanSquare * test.df,
    mean_square: meanSquare,
    error: term ? stratumOf(design, term.unit) : coarsest,
    error_df: test.errorDf,
    f: test.f,
    p: test.p,
    ...(test.reason === null ? {} : { reason: test.reason }),
  };
}
