import type { Seasons } from '../model/generated/seasons.ts';
import { fUpperTail } from '../statistics/distributions/fisher-f.ts';
import { sum } from '../statistics/sum.ts';
import type { TwoWayAdditive } from '../statistics/two-way-table/two-way-additive.ts';
import type { TrialCells } from './season-cells.ts';

/**
 * Whether cultivars differ in how they take to the trials: the mean square of cultivar x trial against the
 * variance of a mean within trials, pooled by degrees of freedom over the trials that had an error of their
 * own. Null where none had, or where some trial without one takes part, since the two would not be alike.
 */
export function interactionTest(fit: TwoWayAdditive, parts: readonly TrialCells[]): Seasons['interaction'] {
  const linking = parts.filter(({ cells }) => cells.length > 1);
  const errors = linking.flatMap(({ error }) => (error === null ? [] : [error]));
  if (errors.length === 0 || errors.length < linking.length || fit.residualMeanSquare === null) return null;
  const errorDf = sum(errors.map(({ df }) => df));
  const pooled = sum(errors.map(({ variance, df }) => variance * df)) / errorDf;
  if (!(pooled > 0)) return null;
  const f = fit.residualMeanSquare / pooled;
  return { f, df: fit.residualDf, error_df: errorDf, p: fUpperTail(f, fit.residualDf, errorDf) };
}
