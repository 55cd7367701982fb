import { averageOverChi } from '../average-over-chi.ts';
import { normalLogUpperTail } from './normal.ts';

/**
 * The chance that noncentral t exceeds t: a normal with mean `noncentrality` and variance 1 over an independent
 * estimate of its standard deviation. It is the average over that estimate, s, of the chance that a standard
 * normal exceeds t s - noncentrality: an integral of positive terms, so small chances keep their relative
 * accuracy, within about 1e-11.
 *
 * Reference: N. L. Johnson, S. Kotz and N. Balakrishnan (1995), Continuous Univariate Distributions, volume 2,
 * 2nd edition, chapter 31.
 *
 * @param df degrees of freedom, positive, fractional allowed, or Infinity
 * @param noncentrality any finite number; 0 gives Student's t
 * @example noncentralTUpperTail(2.306, 8, 0) // 0.0250, the chance of Student's t
 */
export function noncentralTUpperTail(t: number, df: number, noncentrality: number): number {
  if (!(df > 0)) throw new RangeError(`noncentralTUpperTail requires positive degrees of freedom, not ${df}`);
  if (!Number.isFinite(noncentrality)) {
    throw new RangeError(`noncentralTUpperTail requires a finite noncentrality, not ${noncentrality}`);
  }
  if (Number.isNaN(t)) throw new RangeError('noncentralTUpperTail requires a number t, not NaN');
  if (t === Infinity) return 0;
  if (t === -Infinity) return 1;
  return averageOverChi((s) => normalLogUpperTail(t * s - noncentrality), {
    df,
    // A steep step in s, as at a large noncentrality, needs a finer grid than the density alone.
    curvature: 12 + noncentrality * noncentrality,
    start: startOf(t, df, noncentrality),
    slope: Math.abs(t) * (1 + Math.abs(noncentrality)),
  });
}

/** ln s near the bulk of the integrand: s is 1, or less where t s would otherwise lie far above the noncentrality. */
function startOf(t: number, df: number, noncentrality: number): number {
  if (t <= 0 || t <= noncentrality) return 0;
  // Largest exponent of s^df exp(-df s^2 / 2 - (t s - noncentrality)^2 / 2).
  const a = df + t * t;
  const b = t * noncentrality;
  return Math.log((b + Math.sqrt(b * b + 4 * a * df)) / (2 * a));
}

/** The chance that noncentral t is at most t; small chances keep their relative accuracy. */
export function noncentralTLowerTail(t: number, df: number, noncentrality: number): number {
  return noncentralTUpperTail(-t, df, -noncentrality);
}
