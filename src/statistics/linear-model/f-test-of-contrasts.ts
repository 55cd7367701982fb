import { fUpperTail } from '../distributions/fisher-f.ts';
import type { FixedEffects } from './fixed-effects.ts';
import { dotProduct, sandwich, type Matrix } from './matrix.ts';
import { satterthwaiteFrom } from './satterthwaite.ts';
import { symmetricEigen } from './symmetric-eigen.ts';

export interface FTestOfContrasts {
  readonly f: number;
  readonly df: number;
  /** Null where the sampling error of the variances could not be had. */
  readonly errorDf: number | null;
  readonly p: number | null;
}

/**
 * The F test that all of a set of contrasts are zero. Their covariance is turned to its principal axes;
 * F is the mean of the squared t values along them, each with its own Satterthwaite degrees of freedom,
 * and the error degrees of freedom are those whose F has the mean of that sum (Fai and Cornelius). With a
 * single variance they are the residual degrees of freedom exactly. `greatest` caps each of them.
 * Null where the contrasts have no variance.
 *
 * Reference: Fai & Cornelius (1996) Journal of Statistical Computation and Simulation 54, 363-378.
 */
export function fTestOfContrasts(
  effects: FixedEffects,
  contrasts: readonly Float64Array[],
  greatest = Infinity,
): FTestOfContrasts | null {
  const estimates = Float64Array.from(contrasts, (contrast) => dotProduct(contrast, effects.coefficients));
  const axes = symmetricEigen(sandwich(contrasts, effects.covariance));
  const smallest = axes.values.at(-1);
  if (smallest === undefined || !(smallest > 1e-14 * axes.values[0]!)) return null;
  const derivatives = effects.derivatives.map((derivative) => sandwich(contrasts, derivative));
  let sum = 0;
  const degrees: (number | null)[] = [];
  axes.vectors.forEach((axis, m) => {
    const variance = axes.values[m]!;
    sum += dotProduct(axis, estimates) ** 2 / variance;
    const gradient = Float64Array.from(derivatives, (derivative) => formOf(axis, derivative));
    degrees.push(satterthwaiteFrom(effects, variance, gradient, greatest));
  });
  const df = contrasts.length;
  const f = sum / df;
  const errorDf = combinedDegreesOfFreedom(degrees);
  return { f, df, errorDf, p: errorDf === null ? null : fUpperTail(f, df, errorDf) };
}

/**
 * Fai and Cornelius's error degrees of freedom from those of the single t values: 2 E / (E - q) with
 * E = sum of v / (v - 2) over q of them. Where one is 2 or fewer E does not exist; then the fewest of
 * them, at most 2.
 *
 * @example combinedDegreesOfFreedom([4, 10]) // 5.2
 */
export function combinedDegreesOfFreedom(degrees: readonly (number | null)[]): number | null {
  const known = degrees.filter((value) => value !== null);
  if (known.length < degrees.length || known.length === 0) return null;
  const fewest = Math.min(...known);
  const most = Math.max(...known);
  if (most - fewest <= 1e-8 * most) return known.reduce((sum, value) => sum + value, 0) / known.length;
  if (fewest <= 2) return fewest;
  const expected = known.reduce((sum, value) => sum + value / (value - 2), 0);
  return (2 * expected) / (expected - known.length);
}

function formOf(axis: Float64Array, matrix: Matrix): number {
  let sum = 0;
  for (let j = 0; j < axis.length; j++) {
    for (let i = 0; i < axis.length; i++) sum += axis[i]! * axis[j]! * matrix.values[j * axis.length + i]!;
  }
  return sum;
}
