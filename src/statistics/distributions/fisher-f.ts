import { betaLowerTail } from './beta.ts';
import { chiSquareLowerTail, chiSquareUpperTail } from './chi-square.ts';
import { quantileOfTail } from './quantile-of-tail.ts';

function requireDegrees(caller: string, df1: number, df2: number): void {
  if (df1 > 0 && df1 < Infinity && df2 > 0) return;
  throw new RangeError(
    `${caller} requires positive degrees of freedom, the first finite, not ${df1} and ${df2}`,
  );
}

/**
 * The chance that an F variable with df1 and df2 degrees of freedom (positive, fractional allowed; df2 may be
 * Infinity) exceeds f. Computed as an upper tail: small chances keep their relative accuracy to about 1e-300.
 *
 * @example fUpperTail(4.846087862380135, 2, 27) // 0.015909958325622937
 */
export function fUpperTail(f: number, df1: number, df2: number): number {
  requireDegrees('fUpperTail', df1, df2);
  if (!(f > 0)) return 1;
  if (df2 === Infinity) return chiSquareUpperTail(f * df1, df1);
  const ratio = (df1 / df2) * f;
  if (ratio === Infinity) return 0;
  return betaLowerTail(1 / (1 + ratio), df2 / 2, df1 / 2, ratio / (1 + ratio));
}

/** The chance that an F variable with df1 and df2 degrees of freedom is at most f. */
export function fLowerTail(f: number, df1: number, df2: number): number {
  requireDegrees('fLowerTail', df1, df2);
  if (!(f > 0)) return 0;
  if (df2 === Infinity) return chiSquareLowerTail(f * df1, df1);
  const ratio = (df1 / df2) * f;
  if (ratio === Infinity) return 1;
  return betaLowerTail(ratio / (1 + ratio), df1 / 2, df2 / 2, 1 / (1 + ratio));
}

/**
 * The f that an F variable with df1 and df2 degrees of freedom exceeds with chance p, within 1e-10 relative.
 *
 * @example fUpperQuantile(0.05, 2, 27) // 3.3541308285291986
 */
export function fUpperQuantile(p: number, df1: number, df2: number): number {
  requireDegrees('fUpperQuantile', df1, df2);
  const upper = (f: number) => fUpperTail(f, df1, df2);
  return quantileOfTail(p, upper, (f) => fLowerTail(f, df1, df2), 1);
}
