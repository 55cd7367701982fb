import { fUpperTail } from '../distributions/fisher-f.ts';
import { NO_DEGREES_OF_FREEDOM, NO_VARIATION } from '../linear-model/fixed-effects.ts';
import { entryOf } from '../linear-model/matrix.ts';
import { roundingNoise } from '../linear-model/rounding-noise.ts';
import { additiveSet, type AdditiveSet, type TwoWayCell } from './additive-set.ts';
import { linkedSets } from './linked-sets.ts';

export interface AdditiveMean {
  readonly row: number;
  /** Index of the linked set. */
  readonly set: number;
  readonly estimate: number;
  /** Null, like `df`, where the error cannot be estimated. */
  readonly se: number | null;
  readonly df: number | null;
  /** Number of columns that the row has a cell in. */
  readonly columns: number;
}

/** The difference between the adjusted means of two rows of one linked set: `a` less `b`. */
export interface AdditiveDifference {
  readonly a: number;
  readonly b: number;
  readonly set: number;
  readonly estimate: number;
  readonly se: number | null;
  readonly df: number | null;
}

export interface AdditiveRow {
  readonly term: 'rows' | 'columns' | 'residual';
  readonly df: number;
  readonly sumOfSquares: number;
  readonly meanSquare: number | null;
  readonly f: number | null;
  readonly p: number | null;
}

export interface TwoWayAdditive {
  readonly sets: readonly AdditiveSet[];
  readonly means: readonly AdditiveMean[];
  readonly differences: readonly AdditiveDifference[];
  /** Columns after rows, rows after columns, residual: each summed over the linked sets. */
  readonly anova: readonly AdditiveRow[];
  /** One for each cell, in the order given. */
  readonly residuals: Float64Array;
  readonly residualDf: number;
  readonly residualMeanSquare: number | null;
  /** Why there are no standard errors and tests; null where there are. */
  readonly reason: string | null;
}

/**
 * Row + column, additive, by least squares on a two-way table that may have holes, with one value in a
 * cell (cultivar means in trials: the trial is the replicate). Each linked set is fitted by itself, means
 * of a set's rows being over the set's own columns; the residual is pooled over sets. Weights, where
 * given, are inverse variances up to a factor.
 *
 * References: Yates (1933) Empire Journal of Experimental Agriculture 1, 129-142; Patterson (1978) Journal
 * of the National Institute of Agricultural Botany 14, 401-412.
 */
export function twoWayAdditive(cells: readonly TwoWayCell[]): TwoWayAdditive {
  requireSingleCells(cells);
  const links = linkedSets(cells);
  const setOf = new Map(links.flatMap(({ rows }, set) => rows.map((row) => [row, set] as const)));
  const indexes: number[][] = links.map(() => []);
  cells.forEach(({ row }, k) => indexes[setOf.get(row)!]!.push(k));
  const sets = links.map(({ rows, columns }, s) =>
    additiveSet(
      indexes[s]!.map((k) => cells[k]!),
      rows,
      columns,
    ),
  );
  const total = (of: (set: AdditiveSet) => number) => sets.reduce((sum, set) => sum + of(set), 0);
  const rowDf = total(({ rows }) => rows.length - 1);
  const columnDf = total(({ columns }) => columns.length - 1);
  const residualDf = cells.length - total(({ rows, columns }) => rows.length + columns.length - 1);
  const residualSumOfSquares = total((set) => set.residualSumOfSquares);
  const residualMeanSquare = residualDf > 0 ? residualSumOfSquares / residualDf : null;
  const noise = roundingNoise(cells.map(({ value, weight }) => value * Math.sqrt(weight ?? 1)));
  const reason =
    residualMeanSquare === null ? NO_DEGREES_OF_FREEDOM : residualSumOfSquares <= noise ? NO_VARIATION : null;
  const error = reason === null ? residualMeanSquare : null;
  const line = (term: AdditiveRow['term'], df: number, sumOfSquares: number): AdditiveRow => {
    const meanSquare = df > 0 ? sumOfSquares / df : null;
    const f = term === 'residual' || error === null || meanSquare === null ? null : meanSquare / error;
    return { term, df, sumOfSquares, meanSquare, f, p: f === null ? null : fUpperTail(f, df, residualDf) };
  };
  const residuals = new Float64Array(cells.length);
  sets.forEach((set, s) => {
    indexes[s]!.forEach((k, i) => (residuals[k] = set.residuals[i]!));
  });
  return {
    sets,
    means: sets.flatMap((set, s) => meansOf(set, s, cells, error, residualDf)).sort((a, b) => a.row - b.row),
    differences: sets.flatMap((set, s) => differencesOf(set, s, error, residualDf)),
    anova: [
      line(
        'columns',
        columnDf,
        total((set) => set.columnSumOfSquares),
      ),
      line(
        'rows',
        rowDf,
        total((set) => set.rowSumOfSquares),
      ),
      line('residual', residualDf, residualSumOfSquares),
    ],
    residuals,
    residualDf,
    residualMeanSquare,
    reason,
  };
}

function requireSingleCells(cells: readonly TwoWayCell[]): void {
  const seen = new Set<string>();
  for (const { row, column, weight } of cells) {
    const key = `${row} ${column}`;
    if (seen.has(key))
      throw new Error(`twoWayAdditive requires one value in a cell: row ${row}, column ${column}`);
    if (weight !== undefined && !(weight > 0))
      throw new Error(`twoWayAdditive requires weights above 0, not ${weight}`);
    seen.add(key);
  }
}

function meansOf(
  set: AdditiveSet,
  index: number,
  cells: readonly TwoWayCell[],
  error: number | null,
  df: number,
): AdditiveMean[] {
  const counts = new Map<number, number>();
  for (const { row } of cells) counts.set(row, (counts.get(row) ?? 0) + 1);
  return set.rows.map((row, i) => ({
    row,
    set: index,
    estimate: set.rowMeans[i]!,
    se: error === null ? null : Math.sqrt(error * entryOf(set.unscaledCovariance, i, i)),
    df: error === null ? null : df,
    columns: counts.get(row) ?? 0,
  }));
}

function differencesOf(
  set: AdditiveSet,
  index: number,
  error: number | null,
  df: number,
): AdditiveDifference[] {
  const differences: AdditiveDifference[] = [];
  const { rows, rowMeans, unscaledCovariance: v } = set;
  for (let i = 0; i < rows.length; i++) {
    for (let j = i + 1; j < rows.length; j++) {
      const variance = entryOf(v, i, i) + entryOf(v, j, j) - 2 * entryOf(v, i, j);
      differences.push({
        a: rows[i]!,
        b: rows[j]!,
        set: index,
        estimate: rowMeans[i]! - rowMeans[j]!,
        se: error === null ? null : Math.sqrt(error * variance),
        df: error === null ? null : df,
      });
    }
  }
  return differences;
}
