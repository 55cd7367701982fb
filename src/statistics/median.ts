import { quantileOfSorted, sorted } from './quantile.ts';
import { type Recorded, type Statistic, statisticOf } from './statistic.ts';

/** The median of complete numbers: the middle one, or the mean of the middle two. Throws where there are none. */
export function medianOf(values: readonly number[]): number {
  return quantileOfSorted(sorted(values), 0.5);
}

/**
 * The median of recorded data, in the unit of the data. Missing values (null) are left out and counted; null
 * with a reason where none is present.
 *
 * @example median([3, null, 1, 2, 10]) // { value: 2.5, n: 4, missing: 1 }
 */
export function median(values: Recorded): Statistic {
  return statisticOf(values, 'a median', 1, medianOf);
}
