import type { Inference } from '../../model/findings.ts';
import type { FixedEffects } from '../../statistics/linear-model/fixed-effects.ts';
import type { ModelTerms } from '../../statistics/linear-model/model-terms.ts';

export type AnovaRow = Inference['anova'][number];
export type VarianceComponent = Inference['variance_components'][number];

/** A model fitted to a measure's observations. */
export interface FittedModel {
  method: 'analysis of variance' | 'mixed model';
  /** Why it was fitted so, to stand behind the model in words. */
  why: string;
  model: ModelTerms;
  effects: FixedEffects;
  anova: AnovaRow[];
  varianceComponents: VarianceComponent[];
}

/** The line of a stratum's error. */
export function residualRow(stratum: string, df: number, sumOfSquares: number): AnovaRow {
  return {
    term: 'residual',
    df,
    sum_of_squares: sumOfSquares,
    mean_square: sumOfSquares / df,
    error: stratum,
    error_df: null,
    f: null,
    p: null,
  };
}
