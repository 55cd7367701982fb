import { say } from '../../model/say.ts';
import type { StrataAnalysis } from '../../statistics/linear-model/analysis-of-variance-with-strata.ts';
import type { StrataRow } from '../../statistics/linear-model/strata-rows.ts';
import { type AnovaRow, type FittedModel, residualRow } from './fitted-model.ts';

/** The fitted model of a balanced design: analysis of variance with error strata. Null where it is not balanced. */
export function fitByStrata(analysis: StrataAnalysis): FittedModel | null {
  if (!analysis.balanced || analysis.effects === null) return null;
  return {
    method: 'analysis of variance',
    why: 'balanced, so each term is held against the mean square of its own stratum',
    model: analysis.effects.model,
    effects: analysis.effects.fixed,
    anova: analysis.rows.map(rowOf),
    varianceComponents: analysis.varianceComponents.map(({ term, variance, negative }) => ({
      term,
      variance,
      ...(negative
        ? {
            reason: say(
              'came out below zero: units differed less than chance between their parts would make them',
            ),
          }
        : {}),
      ...(variance === null ? { reason: say('no degrees of freedom are left to estimate it') } : {}),
    })),
  };
}

function rowOf(row: StrataRow): AnovaRow {
  if (row.term === null) return residualRow(row.stratum!, row.df, row.sumOfSquares!);
  return {
    term: row.term,
    df: row.df,
    sum_of_squares: row.sumOfSquares,
    mean_square: row.meanSquare,
    error: row.error,
    error_df: row.errorDf,
    f: row.f,
    p: row.p,
    ...(row.reason === null ? {} : { reason: row.reason }),
  };
}
