import betaln from '@stdlib/math-base-special-betaln';
import { betaLowerTail } from './beta.ts';
import { normalUpperQuantile, normalUpperTail } from './normal.ts';
import { keepingAnswers } from '../keeping-answers.ts';
import { quantileOfTail } from './quantile-of-tail.ts';

/**
 * The chance that Student's t with `df` degrees of freedom (positive, fractional allowed, Infinity for the
 * normal) exceeds t. Small chances keep their relative accuracy, down to about 1e-300.
 *
 * @example tUpperTail(2.131449545559323, 15) // 0.025
 */
export function tUpperTail(t: number, df: number): number {
  if (!(df > 0)) throw new RangeError(`tUpperTail requires positive degrees of freedom, not ${df}`);
  if (df === Infinity) return normalUpperTail(t);
  const half = tTwoSided(t, df) / 2;
  return t >= 0 ? half : 1 - half;
}

/** Both tails where the square of t dwarfs df: the leading term of the beta function, in logarithms. */
function farTail(t: number, df: number): number {
  return Math.exp((df / 2) * (Math.log(df) - 2 * Math.log(t)) - betaln(df / 2, 0.5) - Math.log(df / 2));
}

/** The chance that Student's t with `df` degrees of freedom lies further from 0 than t does, on either side. */
export function tTwoSided(t: number, df: number): number {
  if (!(df > 0)) throw new RangeError(`tTwoSided requires positive degrees of freedom, not ${df}`);
  if (df === Infinity) return 2 * normalUpperTail(Math.abs(t));
  const ratio = (t / df) * t;
  if (ratio > 1e30) return farTail(Math.abs(t), df);
  return betaLowerTail(1 / (1 + ratio), df / 2, 0.5, ratio / (1 + ratio));
}

/**
 * The t that Student's t with `df` degrees of freedom exceeds with chance p, within 1e-12 relative.
 *
 * @example tUpperQuantile(0.025, 15) // 2.131449545559323
 */
export const tUpperQuantile = keepingAnswers((p: number, df: number): number => {
  if (!(df > 0)) throw new RangeError(`tUpperQuantile requires positive degrees of freedom, not ${df}`);
  if (!(p >= 0 && p <= 1)) throw new RangeError(`tUpperQuantile requires a chance from 0 to 1, not ${p}`);
  if (df === Infinity) return normalUpperQuantile(p);
  if (p === 0.5) return 0;
  if (p > 0.5) return -tUpperQuantile(1 - p, df);
  const inside = (t: number) => {
    const ratio = (t / df) * t;
    return betaLowerTail(ratio / (1 + ratio), 0.5, df / 2, 1 / (1 + ratio));
  };
  return quantileOfTail(2 * p, (t) => tTwoSided(t, df), inside, Math.max(normalUpperQuantile(p), 1e-3));
});
