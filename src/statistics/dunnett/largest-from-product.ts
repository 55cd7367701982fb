import { normalLogUpperTail, normalUpperTail } from '../distributions/normal.ts';
import { gaussLegendre } from '../gauss-legendre.ts';
import { tailTable } from '../tail-table.ts';
import { allWithin, lattice, type Lattice } from './all-within.ts';
import { cholesky } from './cholesky.ts';
import { nearestFactors, type SymmetricMatrix } from './correlation.ts';
import { logLargestUpperTail } from './largest-of-normals.ts';

/** Beyond this (chances below 1e-14) the correction stays as it is here. */
const correctedTo = 8;

/** Terms below this times the chance of one comparison alone are left out. */
const negligible = 1e-8;

/** Points of the lattice: fewer where each costs more. One comparison besides a pair needs none. */
const pointsFor = (size: number) => (size <= 4 ? 509 : size <= 8 ? 251 : 127);

/** Steps from the product form: more where the correlations are further from it. */
const nodesFor = (size: number, furthest: number) =>
  size === 3 ? 24 : Math.ceil(1.5 + (size <= 5 ? 15 : 6) * furthest);

/**
 * The correction is tabulated from 0 to 16 by a measure of w that is finer near 0, where it turns most sharply, and in
 * narrower pieces where each value costs little.
 */
const placesTo = 16;
const placeOf = (w: number) => (placesTo * Math.log1p(w)) / Math.log1p(correctedTo);
const atPlace = (place: number) => Math.expm1((place * Math.log1p(correctedTo)) / placesTo);
const widthFor = (size: number) => ({ 3: 1, 4: 2, 5: 4 })[size] ?? 8;

/** One pair of comparisons at one step of the way from the product form to the correlations. */
interface Step {
  /** How much the correlation of the pair rises here. */
  rise: number;
  correlation: number;
  /** Means of the others, in units of w, given the pair at w and w, and given it at w and -w. */
  means: readonly [Float64Array, Float64Array];
  /** The lower triangle of the others' covariance given the pair. */
  triangle: Float64Array[];
}

function stepOf(at: SymmetricMatrix, i: number, j: number, rise: number): Step {
  const correlation = at[i]![j]!;
  const left = 1 - correlation * correlation;
  const others = at
    .map((row, index) => ({
      row,
      index,
      onI: (row[i]! - correlation * row[j]!) / left,
      onJ: (row[j]! - correlation * row[i]!) / left,
    }))
    .filter(({ index }) => index !== i && index !== j);
  const covariance = others.map(({ row, onI, onJ }) =>
    others.map(({ row: other, index }) => row[index]! - onI * other[i]! - onJ * other[j]!),
  );
  const same = Float64Array.from(others, ({ onI, onJ }) => onI + onJ);
  const opposite = Float64Array.from(others, ({ onI, onJ }) => onI - onJ);
  return { rise, correlation, means: [same, opposite], triangle: cholesky(covariance) };
}

/** The correlations with the most related first and signs turned so that most are positive, however given. */
function inOrder(given: SymmetricMatrix): number[][] {
  const squares = given.map((row) => row.map((value) => value * value));
  const related = squares.map((row) => row.reduce((total, value) => total + value, 0));
  const order: number[] = [];
  const signs: number[] = [];
  while (order.length < given.length) {
    // What is alike but for rounding is told apart by its relation to those that stand already, first of all
    // to the first.
    const left = related.map((value, i) => (order.includes(i) ? -1 : Math.round(1e9 * value)));
    const next = left.indexOf(Math.max(...left));
    const along = order.reduce((total, i, place) => total + signs[place]! * given[next]![i]!, 0);
    signs.push(along < -1e-9 ? -1 : 1);
    order.push(next);
    squares[next]!.forEach((value, i) => (related[i]! += value / order.length));
  }
  return order.map((i, row) => order.map((j, column) => signs[row]! * signs[column]! * given[i]![j]!));
}

/** The steps from the product form, by quadrature along the straight line to the correlations. */
function stepsFrom(factors: readonly number[], correlation: SymmetricMatrix): Step[] {
  const size = correlation.length;
  const excess = correlation.map((row, i) =>
    row.map((value, j) => (i === j ? 0 : value - factors[i]! * factors[j]!)),
  );
  const furthest = Math.max(...excess.flat().map(Math.abs));
  return gaussLegendre(nodesFor(size, furthest)).flatMap(({ at: part, weight }) => {
    const at = correlation.map((row, i) => row.map((value, j) => value - (1 - part) * excess[i]![j]!));
    return excess.flatMap((row, i) =>
      row.slice(0, i).flatMap((rise, j) => (Math.abs(rise) < 1e-9 ? [] : stepOf(at, i, j, weight * rise))),
    );
  });
}

/** What the steps add to the chance that the largest exceeds w, in units of the chance that one alone does. */
function addedBy(steps: readonly Step[], w: number, on: Lattice): number {
  const logAlone = normalLogUpperTail(w);
  let added = 0;
  for (const { rise, correlation, means, triangle } of steps) {
    const scale = rise / (2 * Math.PI * Math.sqrt(1 - correlation * correlation));
    const same = scale * Math.exp((-w * w) / (1 + correlation) - logAlone);
    const opposite = scale * Math.exp((-w * w) / (1 - correlation) - logAlone);
    if (Math.abs(same) > negligible) added -= same * allWithin(w, means[0], triangle, on);
    if (Math.abs(opposite) > negligible) added += opposite * allWithin(w, means[1], triangle, on);
  }
  return added;
}

/**
 * The natural logarithm of the chance that the largest in size of standard normals of any correlation exceeds w.
 *
 * The chance is known for correlations of product form. From the nearest such form the correlations are changed
 * to their own in a straight line. As the correlation of a pair rises, the chance that all lie within w rises by
 * the density of that pair at the corners of its square, times the chance that the others lie within w given
 * the pair there. Only what these steps add is approximate, so what is close to a product form is very
 * close to exact, far out too. Nothing is drawn: the same correlations always give the same chance, in
 * whatever order and with whatever signs they come.
 *
 * Measured against quadrature over all comparisons but the last, and against finer lattices: within 1e-6 as blocks
 * with a few plants missing relate three to eight comparisons, 5e-6 for twelve; within 1e-4 in the worst
 * cases, where correlations are far from any product or near to singular. It stays between the chance of one
 * alone and the sum over all.
 *
 * References: R. L. Plackett (1954), A reduction formula for normal multivariate integrals, Biometrika 41, 351-360;
 * H. I. Gassmann (2003), Multivariate normal probabilities: implementing an old idea of Plackett's, Journal of
 * Computational and Graphical Statistics 12, 731-752.
 *
 * @param given correlations of three comparisons or more, not singular, none 1 or -1
 * @param start gives factors, each below 1 in size, of the product form to start from
 */
export function logLargestFromProduct(
  given: SymmetricMatrix,
  start: (correlation: SymmetricMatrix) => number[] = nearestFactors,
): (w: number) => number {
  const correlation = inOrder(given);
  const size = correlation.length;
  const factors = start(correlation);
  const steps = stepsFrom(factors, correlation);
  const on = lattice(pointsFor(size), size - 3);
  const logProduct = logLargestUpperTail(factors);
  // Both what is added and this vanish at 0 as the power of w, so that their ratio is smooth throughout.
  const asSmall = (w: number) => (1 - 2 * normalUpperTail(w)) ** size;
  const ratio = (w: number) => addedBy(steps, w, on) / asSmall(w);
  let atEnd: number | undefined;
  const beyond = () => (atEnd ??= ratio(correctedTo));
  const table = tailTable((place) => ratio(atPlace(place)), placesTo, beyond, widthFor(size));
  return (w) => {
    const logAlone = Math.LN2 + normalLogUpperTail(w);
    const times = Math.exp(logProduct(w) - logAlone) + asSmall(w) * table(placeOf(w));
    return Math.min(0, logAlone + Math.log(Math.min(size, Math.max(1, times))));
  };
}
