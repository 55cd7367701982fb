/**
 * The compensated sum of numbers: each addition's rounding error is kept and added back at the end, so that
 * the result is as good as one rounding in most data, however long the list. No values sum to 0.
 *
 * Reference: A. Neumaier (1974), Rundungsfehleranalyse einiger Verfahren zur Summation endlicher Summen,
 * Zeitschrift fuer Angewandte Mathematik und Mechanik 54, 39-51, algorithm IV.
 *
 * @example sum([1, 1e100, 1, -1e100]) // 2
 */
export function sum(values: readonly number[] | Float64Array): number {
  let total = 0;
  let lost = 0;
  for (const value of values) {
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return total + lost;
}
