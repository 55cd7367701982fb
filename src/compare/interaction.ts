import type { Seasons } from '../model/generated/seasons.ts';
import { fUpperTail } from '../statistics/distributions/fisher-f.ts';
import { sum } from '../statistics/sum.ts';
import { twoWayAdditive } from '../statistics/two-way-table/two-way-additive.ts';
import type { TrialCells } from './season-cells.ts';

/**
 * Whether cultivars differ in how they take to the trials, from those trials that had an error of their own:
 * the mean square of cultivar x trial among them against the variance of a mean within trials, pooled by
 * degrees of freedom. Null where fewer than two such trials share cultivars.
 *
 * Reference: W. G. Cochran and G. M. Cox (1957), Experimental Designs, 2nd ed., chapter 14 (series of experiments).
 */
export function interactionTest(parts: readonly TrialCells[]): Seasons['interaction'] {
  const own = parts.flatMap(({ cells, error }) =>
    error !== null && cells.length > 1 ? [{ cells, error }] : [],
  );
  const cultivars = [...new Set(own.flatMap(({ cells }) => cells.map(({ cultivar }) => cultivar)))];
  const rows = new Map(cultivars.map((cultivar, row) => [cultivar, row]));
  const table = own.flatMap(({ cells }, column) =>
    cells.map(({ cultivar, mean }) => ({ row: rows.get(cultivar)!, column, value: mean })),
  );
  if (own.length < 2) return null;
  const { residualMeanSquare, residualDf } = twoWayAdditive(table);
  const errorDf = sum(own.map(({ error }) => error.df));
  const pooled = sum(own.map(({ error }) => error.variance * error.df)) / errorDf;
  if (residualMeanSquare === null || !(pooled > 0)) return null;
  const f = residualMeanSquare / pooled;
  return {
    f,
    df: residualDf,
    error_df: errorDf,
    p: fUpperTail(f, residualDf, errorDf),
    trials: own.length,
  };
}
