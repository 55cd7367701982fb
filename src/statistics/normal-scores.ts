import { normalUpperQuantile } from './distributions/normal.ts';

/**
 * The normal score of each value: the standard normal quantile at (rank - a) / (n + 1 - 2a), a = 3/8 up to ten
 * values and 1/2 beyond, as for R's ppoints; values that are equal share the mean of their ranks. In the
 * order of the values.
 *
 * Reference: G. Blom (1958), Statistical Estimates and Transformed Beta-Variables; R's stats::qqnorm.
 *
 * @example normalScores([3, 1, 2]) // [0.8694237732888861, -0.8694237732888861, 0]
 */
export function normalScores(values: readonly number[] | Float64Array): number[] {
  const n = values.length;
  const offset = n <= 10 ? 3 / 8 : 1 / 2;
  return Array.from(values, (value) => {
    let below = 0;
    let equal = 0;
    for (const other of values) {
      if (other < value) below += 1;
      else if (other === value) equal += 1;
    }
    const rank = below + (equal + 1) / 2;
    return -normalUpperQuantile((rank - offset) / (n + 1 - 2 * offset));
  });
}
