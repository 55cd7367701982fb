import { normalLogUpperTail, normalUpperTail } from '../distributions/normal.ts';
import { keptLast } from '../kept-last.ts';
import { tailTable } from '../tail-table.ts';

/** Beyond this the chance is below 1e-300, and the bound by Bonferroni serves. */
const end = 37;

/** Factors alike to this many decimals are computed once. */
const alike = 1e9;

/** Different sizes of factor, with how many comparisons have each. */
function distinct(factors: readonly number[]): { size: number; left: number; count: number }[] {
  const counts = new Map<number, number>();
  for (const factor of factors) {
    const size = Math.round(Math.abs(factor) * alike) / alike;
    counts.set(size, (counts.get(size) ?? 0) + 1);
  }
  return [...counts]
    .sort(([a], [b]) => a - b)
    .map(([size, count]) => ({ size, left: Math.sqrt(1 - size * size), count }));
}

/**
 * The logarithm of the chance that some |Y_i| exceeds w, where Y_i = b_i Z + sqrt(1 - b_i squared) Z_i with all Z
 * independent standard normals: given Z the Y_i are independent, which leaves one integral, taken by the
 * trapezoidal rule. 1 less a product is taken through logarithms, so no digits cancel in the tail.
 */
function logUpperTail(w: number, parts: ReturnType<typeof distinct>): number {
  const growth = parts.reduce((total, { size, left, count }) => total + count * (size / left) ** 2, 1);
  const step = 0.55 / Math.sqrt(growth);
  const last = 9 + w * parts.at(-1)!.size;
  let total = 0;
  for (let z = 0; z <= last; z += step) {
    let logNone = 0;
    for (const { size, left, count } of parts) {
      const beyond = normalUpperTail((w - size * z) / left) + normalUpperTail((w + size * z) / left);
      logNone += count * Math.log1p(-Math.min(1, beyond));
    }
    total += (z === 0 ? 0.5 : 1) * Math.exp(-0.5 * z * z) * -Math.expm1(logNone);
  }
  return Math.min(0, Math.log((2 * step * total) / Math.sqrt(2 * Math.PI)));
}

const tableOf = keptLast(32, (parts: ReturnType<typeof distinct>) => {
  const size = parts.reduce((total, { count }) => total + count, 0);
  const beyond = (w: number) => Math.log(2 * size) + normalLogUpperTail(w);
  return tailTable((w) => logUpperTail(w, parts), end, beyond);
});

/**
 * The natural logarithm of the chance that the largest in size of standard normals, correlated by products of
 * factors, exceeds w >= 0. Tabulated as needed, and kept for the factors used last.
 *
 * Reference: C. W. Dunnett (1955), A multiple comparison procedure for comparing several treatments with a
 * control, Journal of the American Statistical Association 50, 1096-1121; the form of the integral: C. W.
 * Dunnett and M. Sobel (1955), Biometrika 42, 258-260.
 *
 * @param factors the b_i, each below 1 in size; at least one
 */
export function logLargestUpperTail(factors: readonly number[]): (w: number) => number {
  return tableOf(distinct(factors));
}
