import { constrainedNewton } from '../linear-model/constrained-newton.ts';
import type { FixedEffects } from '../linear-model/fixed-effects.ts';
import { NO_DEGREES_OF_FREEDOM, NO_VARIATION } from '../linear-model/fixed-effects.ts';
import { zeroMatrix } from '../linear-model/matrix.ts';
import { roundingNoise } from '../linear-model/rounding-noise.ts';
import { satterthwaite } from '../linear-model/satterthwaite.ts';
import { sumOfSquares } from '../sum-of-squares.ts';
import { meanOf } from '../mean.ts';
import { varianceCovariance } from '../linear-model/variance-covariance.ts';
import type { TwoWayCell } from './additive-set.ts';
import { linkedSets } from './linked-sets.ts';
import { randomColumnsLikelihood } from './random-columns-likelihood.ts';
import type { AdditiveDifference, AdditiveMean } from './two-way-additive.ts';

export interface RowMeansWithRandomColumns {
  readonly means: readonly AdditiveMean[];
  /** Pairs within a linked set only. */
  readonly differences: readonly AdditiveDifference[];
  readonly columnVariance: number;
  /** True where the likelihood would have the variance between columns below zero. */
  readonly atZero: boolean;
  readonly residualVariance: number;
  /** The restricted log-likelihood, the rows' counts left out (as for REML elsewhere here). */
  readonly logLikelihood: number;
}

/**
 * Row means of a two-way table with holes where the columns are a sample (trials random): REML for the
 * variances, generalised least squares for the means, Satterthwaite's degrees of freedom. A mean's
 * standard error holds the variance between columns; a difference's hardly. Weights are not used.
 *
 * Reference: Searle, Casella & McCulloch (1992) Variance Components, chapters 6 and 7.
 */
export function rowMeansWithRandomColumns(
  cells: readonly TwoWayCell[],
): RowMeansWithRandomColumns | { readonly reason: string } {
  const rows = [...new Set(cells.map(({ row }) => row))].sort((a, b) => a - b);
  const columns = [...new Set(cells.map(({ column }) => column))];
  const rowAt = new Map(rows.map((row, i) => [row, i]));
  const columnAt = new Map(columns.map((column, j) => [column, j]));
  const centre = meanOf(cells.map(({ value }) => value));
  const compact = cells.map(({ row, column, value }) => ({
    row: rowAt.get(row)!,
    column: columnAt.get(column)!,
    value: value - centre,
  }));
  const incidence = zeroMatrix(rows.length, columns.length);
  const rowCounts = new Float64Array(rows.length);
  const columnCounts = new Float64Array(columns.length);
  for (const { row, column } of compact) {
    incidence.values[column * rows.length + row] = 1;
    rowCounts[row]! += 1;
    columnCounts[column]! += 1;
  }
  const degrees = cells.length - rows.length;
  if (degrees < 2 || columns.length < 2) return { reason: NO_DEGREES_OF_FREEDOM };
  const about = rows.reduce(
    (total, row) => total + sumOfSquares(cells.filter((cell) => cell.row === row).map(({ value }) => value)),
    0,
  );
  if (about <= roundingNoise(cells.map(({ value }) => value))) return { reason: NO_VARIATION };

  const table = { incidence, rowCounts, columnCounts, cells: compact };
  const scale = about / degrees;
  const found = [0.5, 0.99]
    .map((share) =>
      constrainedNewton(
        (variances) => randomColumnsLikelihood(table, variances),
        Float64Array.of(scale * share, scale * (1 - share)),
      ),
    )
    .filter((minimum) => minimum !== null)
    .sort((a, b) => a.evaluation.deviance - b.evaluation.deviance)[0];
  if (!found || found.at[0]! * degrees <= 1e-9 * about) {
    return { reason: 'the variances within and between columns cannot be told apart' };
  }
  const { at: variances, evaluation } = found;
  const effects: FixedEffects = {
    coefficients: evaluation.rowMeans.map((mean) => mean + centre),
    covariance: evaluation.covariance,
    dependencies: [],
    derivatives: evaluation.derivatives,
    varianceCovariance: varianceCovariance(variances, evaluation.observed),
    withoutError: [],
  };
  const sets = linkedSets(cells);
  const setOf = new Map(sets.flatMap(({ rows: members }, s) => members.map((row) => [row, s] as const)));
  const describe = (weights: readonly (readonly [number, number])[]) => {
    const contrast = new Float64Array(rows.length);
    for (const [i, weight] of weights) contrast[i] = weight;
    const estimate = weights.reduce((total, [i, weight]) => total + weight * effects.coefficients[i]!, 0);
    const variance = weights.reduce(
      (total, [i, left]) =>
        weights.reduce(
          (inner, [j, right]) => inner + left * right * effects.covariance.values[j * rows.length + i]!,
          total,
        ),
      0,
    );
    const df = satterthwaite(effects, contrast);
    return { estimate, se: df === null ? null : Math.sqrt(variance), df };
  };
  const differences: AdditiveDifference[] = [];
  rows.forEach((a, i) => {
    for (let j = i + 1; j < rows.length; j++) {
      const b = rows[j]!;
      const set = setOf.get(a)!;
      if (setOf.get(b) === set)
        differences.push({
          a,
          b,
          set,
          ...describe([
            [i, 1],
            [j, -1],
          ]),
        });
    }
  });
  const logCounts = rowCounts.reduce((total, count) => total + Math.log(count), 0);
  return {
    means: rows.map((row, i) => ({
      row,
      set: setOf.get(row)!,
      columns: rowCounts[i]!,
      ...describe([[i, 1]]),
    })),
    differences,
    columnVariance: variances[1]!,
    atZero: variances[1] === 0,
    residualVariance: variances[0]!,
    logLikelihood: -0.5 * (evaluation.deviance - logCounts + degrees * Math.log(2 * Math.PI)),
  };
}
