import erfc from '@stdlib/math-base-special-erfc';

const rootTwoPi = Math.sqrt(2 * Math.PI);

/** The standard normal density at z. */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / rootTwoPi;
}

/** The chance that a standard normal exceeds z; small p keep their relative accuracy. */
export function normalUpperTail(z: number): number {
  return 0.5 * erfc(z * Math.SQRT1_2);
}

/** The chance that a standard normal is at most z; small p keep their relative accuracy. */
export function normalLowerTail(z: number): number {
  return 0.5 * erfc(-z * Math.SQRT1_2);
}

/**
 * The natural logarithm of the chance that a standard normal exceeds z, for any z: beyond 25 by the asymptotic
 * series of the complementary error function, where the chance itself would in the end underflow.
 *
 * Reference: Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 26.2.12.
 */
export function normalLogUpperTail(z: number): number {
  if (z < -1) return Math.log1p(-normalUpperTail(-z));
  if (z < 25) return Math.log(normalUpperTail(z));
  const inverse = 1 / (z * z);
  const series = 1 - inverse * (1 - 3 * inverse * (1 - 5 * inverse * (1 - 7 * inverse * (1 - 9 * inverse))));
  return -0.5 * z * z - Math.log(z * rootTwoPi) + Math.log(series);
}

const polynomial = (x: number, coefficients: readonly number[]) =>
  coefficients.reduceRight((value, coefficient) => value * x + coefficient, 0);

const ratio = (x: number, [top, bottom]: readonly [readonly number[], readonly number[]]) =>
  polynomial(x, top) / polynomial(x, bottom);

/** Coefficients of algorithm AS 241 (PPND16), lowest power first, for the middle, the tail and the far tail. */
const middle = [
  [
    3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
    45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
  ],
  [
    1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867,
    39307.89580009271061, 28729.085735721942674, 5226.495278852854561,
  ],
] as const;
const tail = [
  [
    1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
    1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833, 7.7454501427834140764e-4,
  ],
  [
    1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459,
    0.0151986665636164571966, 5.475938084995344946e-4, 1.05075007164441684324e-9,
  ],
] as const;
const farTail = [
  [
    6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123,
    0.026532189526576123093, 0.0012426609473880784386, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
  ],
  [
    1, 0.59983220655588793769, 0.13692988092273580531, 0.0148753612908506148525, 7.868691311456132591e-4,
    1.8463183175100546818e-5, 1.4215117583164458887e-7, 2.04426310338993978564e-15,
  ],
] as const;

/**
 * The standard normal z that is exceeded with chance p, 0 < p < 1, accurate to about 1e-15 relative.
 * p of 0 gives Infinity, p of 1 gives -Infinity.
 *
 * Reference: M. J. Wichura (1988), Algorithm AS 241: the percentage points of the normal distribution,
 * Applied Statistics 37, 477-484.
 */
export function normalUpperQuantile(p: number): number {
  if (!(p >= 0 && p <= 1))
    throw new RangeError(`normalUpperQuantile requires a chance from 0 to 1, not ${p}`);
  if (p === 0) return Infinity;
  if (p === 1) return -Infinity;
  const fromHalf = 0.5 - p;
  if (Math.abs(fromHalf) <= 0.425) return fromHalf * ratio(0.180625 - fromHalf * fromHalf, middle);
  const r = Math.sqrt(-Math.log(fromHalf > 0 ? p : 1 - p));
  const z = r <= 5 ? ratio(r - 1.6, tail) : ratio(r - 5, farTail);
  return fromHalf > 0 ? z : -z;
}
