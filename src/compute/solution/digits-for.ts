/**
 * Digits after the decimal point that give the least of a column's numbers three figures, at most three: enough to
 * weigh by, and one for the whole column, so that its numbers stand aligned. Zeros and unknowns do not count.
 *
 * @example digitsFor([100, 66]) // 1
 */
export function digitsFor(values: readonly (number | null)[]): number {
  const sizes = values.filter((value) => value !== null).map(Math.abs);
  const least = Math.min(...sizes.filter((size) => size > 0));
  if (!Number.isFinite(least)) return 1;
  return Math.min(3, Math.max(0, 2 - Math.floor(Math.log10(least))));
}
