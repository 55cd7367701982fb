/**
 * The root of a continuous function between two points at which its signs differ, by Brent's method (inverse
 * quadratic interpolation and secant steps, guarded by bisection).
 *
 * Reference: R. P. Brent (1973), Algorithms for Minimization without Derivatives, Prentice-Hall, chapter 4.
 *
 * @param tolerance absolute, on the argument; throws where the signs at the ends are alike
 */
export function rootBetween(of: (x: number) => number, from: number, to: number, tolerance: number): number {
  let [a, b] = [from, to];
  let [atA, atB] = [of(a), of(b)];
  if (atA === 0) return a;
  if (atB === 0) return b;
  if (!(atA * atB < 0))
    throw new RangeError(`rootBetween requires a change of sign between ${from} and ${to}`);
  let [c, atC, step, last] = [a, atA, b - a, b - a];
  for (let round = 0; round < 200; round += 1) {
    if (atB > 0 === atC > 0) [c, atC, step, last] = [a, atA, b - a, b - a];
    if (Math.abs(atC) < Math.abs(atB)) [a, atA, b, atB, c, atC] = [b, atB, c, atC, b, atB];
    const close = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= close || atB === 0) return b;
    [step, last] = nextStep(a, atA, b, atB, c, atC, half, close, step, last);
    [a, atA] = [b, atB];
    b += Math.abs(step) > close ? step : Math.sign(half) * close;
    atB = of(b);
  }
  return b;
}

/** The step from b, and the one before it by which the next is judged: interpolated if it stays inside, else half. */
function nextStep(
  a: number,
  atA: number,
  b: number,
  atB: number,
  c: number,
  atC: number,
  half: number,
  close: number,
  step: number,
  last: number,
): [number, number] {
  if (Math.abs(last) < close || Math.abs(atA) <= Math.abs(atB)) return [half, half];
  const s = atB / atA;
  let p: number;
  let q: number;
  if (a === c) {
    p = 2 * half * s;
    q = 1 - s;
  } else {
    const toC = atA / atC;
    const r = atB / atC;
    p = s * (2 * half * toC * (toC - r) - (b - a) * (r - 1));
    q = (toC - 1) * (r - 1) * (s - 1);
  }
  if (p > 0) q = -q;
  p = Math.abs(p);
  const inside = 2 * p < Math.min(3 * half * q - Math.abs(close * q), Math.abs(last * q));
  return inside ? [p / q, step] : [half, half];
}
