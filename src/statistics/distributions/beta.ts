import betainc from '@stdlib/math-base-special-betainc';
import betaln from '@stdlib/math-base-special-betaln';

/** Below this the library's intermediate results begin to underflow, and the fraction below takes over. */
const underflowNears = 1e-240;

/**
 * The regularised incomplete beta function far out in its lower tail, by Lentz's continued fraction with the
 * factor before it in logarithms. Good for x well below a / (a + b).
 *
 * Reference: Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 26.5.8.
 */
function farLowerTail(x: number, a: number, b: number, complement: number): number {
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m < 10_000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    value *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return Math.exp(a * Math.log(x) + b * Math.log(complement) - betaln(a, b) + Math.log(value / a));
}

/**
 * The chance that a beta variable with shapes a and b is at most x: the regularised incomplete beta function,
 * computed as the tail it is, so that small chances keep their relative accuracy, down to 1e-300.
 * `complement` is 1 - x, given apart where it is known better than by subtraction.
 *
 * @example betaLowerTail(0.5, 2, 2) // 0.5
 */
export function betaLowerTail(x: number, a: number, b: number, complement = 1 - x): number {
  if (!(a > 0 && b > 0)) throw new RangeError(`betaLowerTail requires positive shapes, not ${a} and ${b}`);
  if (!(x > 0)) return 0;
  if (!(complement > 0)) return 1;
  const tail = x <= 0.5 ? betainc(x, a, b, true, false) : betainc(complement, b, a, true, true);
  return tail < underflowNears ? farLowerTail(x, a, b, complement) : tail;
}

/** The chance that a beta variable with shapes a and b exceeds x; `complement` is 1 - x. */
export function betaUpperTail(x: number, a: number, b: number, complement = 1 - x): number {
  return betaLowerTail(complement, b, a, x);
}
