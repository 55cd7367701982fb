import { normalUpperQuantile } from '../distributions/normal.ts';
import { tabulatedUpperTail } from './normal-tail-table.ts';

/** Points of a lattice, each coordinate between 0 and 1: one after the other, `dimensions` numbers each. */
export interface Lattice {
  points: Float64Array;
  dimensions: number;
}

/**
 * Lattices of Korobov's form: how many points (a prime), and of all multipliers the one for which the usual error
 * for periodic functions, later dimensions counting less, is least over two to seven dimensions together.
 */
const multipliers = new Map([
  [509, 118],
  [251, 97],
  [127, 37],
]);

/**
 * Points n (1, a, a squared, ...) / N for n = 1/2, 3/2, ... to N, less whole numbers, each coordinate folded
 * (x to 1 - |2 x - 1|), so that what is summed over them is as good as periodic.
 *
 * Reference: N. M. Korobov (1959), Doklady Akademii Nauk SSSR 124, 1207-1210; the folding: F. J. Hickernell
 * (2002), Obtaining O(N^(-2+e)) convergence for lattice quadrature rules, Springer.
 */
export function lattice(size: number, dimensions: number): Lattice {
  const multiplier = multipliers.get(size)!;
  const points = new Float64Array(size * dimensions);
  let generator = 1;
  for (let dimension = 0; dimension < dimensions; dimension += 1) {
    for (let n = 0; n < size; n += 1) {
      const place = (((n + 0.5) * generator) / size) % 1;
      points[n * dimensions + dimension] = 1 - Math.abs(2 * place - 1);
    }
    generator = (generator * multiplier) % size;
  }
  return { points, dimensions };
}

/**
 * The chance that every |means_i + Y_i| is at most w, Y normal with covariance `triangle` times its transpose: by
 * separation of variables. Each Y_i in turn is drawn within its limits given those before, and the chances of
 * its lying within them are multiplied; this is averaged over the lattice. The last need not be drawn.
 *
 * Reference: A. Genz (1992), Numerical computation of multivariate normal probabilities, Journal of Computational
 * and Graphical Statistics 1, 141-149.
 *
 * @param means in units of w
 * @param triangle lower triangular
 * @param on points of one dimension less than there are Y_i, or more
 */
export function allWithin(
  w: number,
  means: Float64Array,
  triangle: readonly Float64Array[],
  on: Lattice,
): number {
  const last = triangle.length - 1;
  if (last < 0) return 1;
  const count = last === 0 ? 1 : on.points.length / on.dimensions;
  const drawn = new Float64Array(last);
  let total = 0;
  for (let n = 0; n < count; n += 1) {
    let chance = 1;
    for (let i = 0; i <= last; i += 1) {
      const row = triangle[i]!;
      let mean = means[i]! * w;
      for (let j = 0; j < i; j += 1) mean += row[j]! * drawn[j]!;
      // By the distance of the mean alone, so that no digits cancel and signs make no difference.
      const distance = Math.abs(mean);
      const below = tabulatedUpperTail((w + distance) / row[i]!);
      const inside = tabulatedUpperTail((distance - w) / row[i]!) - below;
      chance *= inside;
      if (i === last || chance === 0) break;
      const z = normalUpperQuantile(Math.max(1e-300, below + on.points[n * on.dimensions + i]! * inside));
      // A mean that is 0 but for rounding is on one side always.
      drawn[i] = mean < -1e-9 ? z : -z;
    }
    total += chance;
  }
  return total / count;
}
