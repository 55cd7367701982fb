import { normalLogUpperTail, normalLowerTail } from './distributions/normal.ts';
import { tailTable } from './tail-table.ts';

const rootTwoPi = Math.sqrt(2 * Math.PI);

/** From here on only one pair can lie so far apart, to better than 1e-13. */
const onePairOnly = 24;

/**
 * The logarithm of the chance that the range of `groups` standard normals exceeds w, by the trapezoidal rule on
 * the largest of them, z: the chance that all others lie below it, less the chance that they lie within w of it.
 * Both are powers, and their difference is taken through 1 - (1 - r)^(groups - 1), so no digits cancel.
 */
function logUpperTail(w: number, groups: number): number {
  const step = 0.75 / Math.sqrt(groups);
  const last = Math.max(9, w / 2 + 9);
  let total = 0;
  for (let z = -9; z <= last; z += step) {
    const below = normalLowerTail(z);
    const far = normalLowerTail(z - w) / below;
    const someFar = -Math.expm1((groups - 1) * Math.log1p(-far));
    total += Math.exp(-0.5 * z * z + (groups - 1) * Math.log(below)) * someFar;
  }
  return Math.min(0, Math.log((groups * step * total) / rootTwoPi));
}

/** The same where only one pair can lie so far apart: pairs times the two-sided tail of their difference. */
function logUpperTailOfPairs(w: number, groups: number): number {
  return Math.log(groups * (groups - 1)) + normalLogUpperTail(w * Math.SQRT1_2);
}

const tables = new Map<number, (w: number) => number>();

/**
 * The natural logarithm of the chance that the range of `groups` independent standard normals exceeds w, as a
 * function of w >= 0, within about 1e-13. Tabulated once for each number of groups, piece by piece as needed.
 *
 * @param groups a whole number, at least 2
 */
export function logRangeUpperTail(groups: number): (w: number) => number {
  const known = tables.get(groups);
  if (known) return known;
  const table = tailTable(
    (w) => logUpperTail(w, groups),
    onePairOnly,
    (w) => logUpperTailOfPairs(w, groups),
  );
  tables.set(groups, table);
  return table;
}
