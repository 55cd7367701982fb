import { sum } from '../sum.ts';

/** Observations gathered into units within which nothing that the model knows of varies. */
export interface DistinctUnits {
  /** For each observation the index of its unit; units are numbered as they first occur. */
  readonly unitOf: readonly number[];
  /** For each unit its first observation. */
  readonly first: readonly number[];
  readonly sizes: readonly number[];
  /** Mean of each unit's responses. */
  readonly means: Float64Array;
  /** Sum of squares of the responses about their units' means, with its degrees of freedom. */
  readonly withinSumOfSquares: number;
  readonly withinDf: number;
}

/**
 * Gathers observations alike in every one of several lists (level indexes, groups, covariates). An
 * analysis of the observations then needs only each unit's mean, weighted by the root of its size, and
 * the sum of squares within units: an exact saving.
 */
export function distinctUnits(
  responses: ArrayLike<number>,
  lists: readonly (readonly number[])[],
): DistinctUnits {
  const n = responses.length;
  let unitOf: number[] = new Array<number>(n).fill(0);
  for (const list of lists) unitOf = refine(unitOf, list);
  const members: number[][] = [];
  unitOf.forEach((unit, i) => (members[unit] ??= []).push(i));
  const means = new Float64Array(members.length);
  const squares: number[] = [];
  members.forEach((indexes, unit) => {
    const values = indexes.map((i) => responses[i]!);
    const rough = sum(values) / values.length;
    const deviations = values.map((value) => value - rough);
    const correction = sum(deviations) / values.length;
    means[unit] = rough + correction;
    for (const deviation of deviations) squares.push((deviation - correction) ** 2);
  });
  return {
    unitOf,
    first: members.map((indexes) => indexes[0]!),
    sizes: members.map((indexes) => indexes.length),
    means,
    withinSumOfSquares: sum(squares),
    withinDf: n - members.length,
  };
}

/** Numbers, as they first occur, the combinations of two groupings. */
export function refine(groups: readonly number[], by: readonly number[]): number[] {
  const seen = new Map<number, Map<number, number>>();
  let count = 0;
  return groups.map((group, i) => {
    let inner = seen.get(group);
    if (!inner) seen.set(group, (inner = new Map()));
    let index = inner.get(by[i]!);
    if (index === undefined) inner.set(by[i]!, (index = count++));
    return index;
  });
}
