import { sum } from '../sum.ts';

export type FinlayWilkinson =
  | {
      readonly slope: number;
      /** Standard error of the slope; null, like the deviation mean square, with fewer than three trials. */
      readonly se: number | null;
      readonly deviationMeanSquare: number | null;
      readonly df: number;
    }
  | { readonly slope: null; readonly reason: string };

/**
 * Finlay and Wilkinson's regression of a cultivar's values on an index of its trials (the trials' adjusted
 * means over all cultivars): a slope above 1 gains more than others where trials yield more. The deviation
 * mean square, in the square of the values' unit, is what the line leaves, on (trials - 2) degrees of
 * freedom. Values and index are in the same order, one each for a trial that the cultivar was in.
 *
 * References: Finlay & Wilkinson (1963) Australian Journal of Agricultural Research 14, 742-754 (here
 * without their logarithms); Eberhart & Russell (1966) Crop Science 6, 36-40 (deviations).
 *
 * @example finlayWilkinson([10, 13, 19], [11, 13, 15]).slope // 2.25
 */
export function finlayWilkinson(values: readonly number[], index: readonly number[]): FinlayWilkinson {
  if (values.length !== index.length) {
    throw new Error(
      `finlayWilkinson requires as many index values as values: ${index.length}, ${values.length}`,
    );
  }
  const n = values.length;
  if (n < 2) return { slope: null, reason: 'the cultivar was in fewer than two trials' };
  const meanIndex = sum(index) / n;
  const meanValue = sum(values) / n;
  const spread = sum(index.map((at) => (at - meanIndex) ** 2));
  if (!(spread > 1e-20 * sum(index.map((at) => at * at)))) {
    return { slope: null, reason: 'the trials do not differ' };
  }
  const slope = sum(index.map((at, j) => (at - meanIndex) * (values[j]! - meanValue))) / spread;
  const df = n - 2;
  if (df === 0) return { slope, se: null, deviationMeanSquare: null, df };
  const deviations = values.map((value, j) => value - meanValue - slope * (index[j]! - meanIndex));
  const deviationMeanSquare = sum(deviations.map((deviation) => deviation ** 2)) / df;
  return { slope, se: Math.sqrt(deviationMeanSquare / spread), deviationMeanSquare, df };
}
