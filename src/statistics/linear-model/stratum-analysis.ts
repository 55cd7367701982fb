import { householderQr, rotate } from './householder-qr.ts';
import { dotProduct, matrixFromColumns } from './matrix.ts';
import type { ModelTerm } from './model-terms.ts';
import type { StratumRows } from './strata-rotation.ts';

export interface StratumAnalysis {
  readonly name: string;
  /** Dimensions of the stratum: its treatment terms' and its error's degrees of freedom together. */
  readonly dimension: number;
  /** The terms found in the stratum, in their order. */
  readonly terms: readonly { readonly term: string; readonly df: number; readonly sumOfSquares: number }[];
  readonly errorDf: number;
  readonly errorSumOfSquares: number;
  /** Whether the terms are orthogonal to one another within the stratum. */
  readonly orthogonal: boolean;
}

/** What is left of a column in a stratum, beside its own length, below which it is not there. */
export const ABSENT = 1e-7;

/**
 * Splits one stratum's share of the responses among the treatment terms estimated in it, in their order,
 * and the error. `columns` are the rotated columns of the model matrix and `responses` the rotated
 * responses; `within` adds the variation within units to the finest stratum.
 */
export function analyseStratum(
  rows: StratumRows,
  treatments: readonly ModelTerm[],
  columns: readonly Float64Array[],
  responses: Float64Array,
  within: { readonly withinDf: number; readonly withinSumOfSquares: number },
): StratumAnalysis {
  const height = rows.to - rows.from;
  const segments: Float64Array[] = [];
  const owners: number[] = [];
  treatments.forEach((term, t) => {
    for (let j = term.start; j < term.start + term.count; j++) {
      const column = columns[j]!;
      const segment = column.subarray(rows.from, rows.to);
      if (lengthOf(segment) <= ABSENT * lengthOf(column)) continue;
      segments.push(segment);
      owners.push(t);
    }
  });
  const qr = householderQr(matrixFromColumns(height, segments), ABSENT);
  const effects = rotate(qr, responses.subarray(rows.from, rows.to));
  const terms = treatments.flatMap(({ name }, t) => {
    const squares = qr.independent.flatMap((column, k) => (owners[column] === t ? [effects[k]! ** 2] : []));
    if (squares.length === 0) return [];
    return [
      { term: name, df: squares.length, sumOfSquares: squares.reduce((sum, square) => sum + square, 0) },
    ];
  });
  const rank = qr.independent.length;
  const rest = effects.subarray(rank);
  return {
    name: rows.name,
    dimension: height + within.withinDf,
    terms,
    errorDf: height - rank + within.withinDf,
    errorSumOfSquares: dotProduct(rest, rest) + within.withinSumOfSquares,
    orthogonal: areOrthogonal(segments, owners),
  };
}

/** The Euclidean length of a vector. */
export function lengthOf(vector: Float64Array): number {
  return Math.sqrt(dotProduct(vector, vector));
}

function areOrthogonal(segments: readonly Float64Array[], owners: readonly number[]): boolean {
  return segments.every((left, i) =>
    segments.every((right, j) => {
      if (j >= i || owners[i] === owners[j]) return true;
      return Math.abs(dotProduct(left, right)) <= ABSENT * lengthOf(left) * lengthOf(right);
    }),
  );
}
