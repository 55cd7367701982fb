import gammaln from '@stdlib/math-base-special-gammaln';

/** Terms smaller than exp(-negligible) times the largest are left out. */
const negligible = 34;

/** The logarithm of the density's constant, Stirling's series where the plain form would lose digits. */
function logConstant(df: number): number {
  const a = df / 2;
  if (a < 15) return Math.LN2 + a * Math.log(a) - a - gammaln(a);
  const square = 1 / (a * a);
  const series =
    (1 / 12 - square * (1 / 360 - square * (1 / 1260 - square * (1 / 1680 - square / 1188)))) / a;
  return Math.LN2 + 0.5 * Math.log(a / (2 * Math.PI)) - series;
}

export interface AverageOverChi {
  /** Degrees of freedom of s, positive, fractional allowed; Infinity makes s exactly 1. */
  df: number;
  /** How fast the tail turns: about the largest curvature of its logarithm in ln s. Sets the step. */
  curvature: number;
  /** Where ln s is worth starting from: anywhere near the bulk of the integrand. */
  start: number;
  /** For small s the tail differs from its limit by no more than about this multiple of s. */
  slope: number;
}

/**
 * The mean of a tail probability over an estimated standard deviation: the integral over s of the density of s,
 * where df times s squared is chi-square on df degrees of freedom, times exp(logTail(s)).
 *
 * In u = ln s the integrand is analytic and dies away at both ends, so the trapezoidal rule converges
 * exponentially; all terms are positive, so the result keeps its relative accuracy however small it is. The sum
 * runs outward from `start` until terms no longer count. Below that, where the tail is as good as constant,
 * the terms fall geometrically and are added in closed form.
 *
 * Reference: L. N. Trefethen and J. A. C. Weideman (2014), The exponentially convergent trapezoidal rule,
 * SIAM Review 56, 385-458.
 */
export function averageOverChi(
  logTail: (s: number) => number,
  { df, curvature, start, slope }: AverageOverChi,
): number {
  if (!(df > 0)) throw new RangeError(`averageOverChi requires positive degrees of freedom, not ${df}`);
  if (df === Infinity) return Math.exp(logTail(1));
  const step = 0.52 / Math.sqrt(df + curvature);
  const constant = logConstant(df);
  const first = Math.round(start / step);
  let total = 0;
  let largest = -Infinity;
  const logTerm = (u: number, excess: number) => {
    const term = constant + df * (u - 0.5 * excess * (excess + 2)) + logTail(1 + excess);
    if (term > largest) largest = term;
    return term;
  };
  for (let index = first; ; index += 1) {
    const term = logTerm(index * step, Math.expm1(index * step));
    if (!(term > largest - negligible)) break;
    total += Math.exp(term);
  }
  for (let index = first - 1; ; index -= 1) {
    const s = Math.exp(index * step);
    const term = logTerm(index * step, s > 0.5 ? Math.expm1(index * step) : s - 1);
    // How far the terms from here down may differ, relatively, from a geometric series.
    const departure = Math.max(slope * s, df * s * s);
    if (!(term + Math.log(Math.min(1, departure)) > largest - negligible)) {
      return step * (total + Math.exp(term) / -Math.expm1(-df * step));
    }
    total += Math.exp(term);
  }
}
