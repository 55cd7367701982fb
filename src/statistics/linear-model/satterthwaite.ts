import type { FixedEffects } from './fixed-effects.ts';
import { dotProduct, matrixTimesVector, quadraticForm } from './matrix.ts';

/**
 * Satterthwaite's degrees of freedom of one contrast: twice the square of its variance over the sampling
 * variance of that variance, by the delta method: 2 v^2 / (g' A g), g the derivatives of v by the variance
 * components and A their sampling covariance. Exactly the residual degrees of freedom where there is one
 * variance. Null where A is not known or the contrast has no variance. At most `greatest`, where given:
 * the degrees of freedom of the stratum of the contrast's own experimental unit.
 *
 * References: Satterthwaite (1946) Biometrics Bulletin 2, 110-114; Giesbrecht & Burns (1985) Biometrics
 * 41, 477-486.
 */
export function satterthwaite(
  effects: FixedEffects,
  contrast: Float64Array,
  greatest = Infinity,
): number | null {
  const variance = quadraticForm(contrast, effects.covariance, contrast);
  const gradient = Float64Array.from(effects.derivatives, (derivative) =>
    quadraticForm(contrast, derivative, contrast),
  );
  return satterthwaiteFrom(effects, variance, gradient, greatest);
}

/** As `satterthwaite`, from the contrast's variance and the derivatives of that variance. */
export function satterthwaiteFrom(
  effects: FixedEffects,
  variance: number,
  gradient: Float64Array,
  greatest = Infinity,
): number | null {
  if (effects.varianceCovariance === null) return null;
  const sampling = dotProduct(gradient, matrixTimesVector(effects.varianceCovariance, gradient));
  if (!(variance > 0) || !(sampling > 0)) return null;
  return Math.min(greatest, withoutRounding((2 * variance * variance) / sampling));
}

/** Whole where only rounding parts it from a whole number: then the contrast rests on a single mean square. */
function withoutRounding(df: number): number {
  const whole = Math.round(df);
  return Math.abs(df - whole) <= 1e-10 * whole ? whole : df;
}
