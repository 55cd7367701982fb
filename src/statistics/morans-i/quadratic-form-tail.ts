/** Steps of the quadrature: half their width halves the work's error exponent many times over. */
const STEP = 1 / 32;
const REACH = 4.2;

/**
 * The chance that a weighted sum of independent chi-squares of 1 degree of freedom is above 0: the sum of
 * w z^2 over `weights`, some positive and some negative. By Imhof's integral,
 * 1/2 + (1/pi) integral over u > 0 of sin(sum atan(w u) / 2) / (u prod (1 + w^2 u^2)^(1/4)),
 * with u = exp((pi / 2) sinh t) and the trapezoidal rule. Good to about 1e-10.
 *
 * References: Imhof (1961) Biometrika 48, 419-426; Takahasi & Mori (1974) Publications of the Research
 * Institute for Mathematical Sciences 9, 721-741.
 *
 * @example chanceFormIsPositive([1, -1]) // 0.5
 */
export function chanceFormIsPositive(weights: readonly number[]): number {
  const largest = Math.max(0, ...weights.map(Math.abs));
  if (largest === 0) throw new Error('chanceFormIsPositive requires a weight other than 0');
  const scaled = weights.map((weight) => weight / largest).filter((weight) => Math.abs(weight) > 1e-14);
  if (scaled.every((weight) => weight > 0)) return 1;
  if (scaled.every((weight) => weight < 0)) return 0;
  let total = 0;
  for (let t = -REACH; t <= REACH; t += STEP) {
    const u = Math.exp((Math.PI / 2) * Math.sinh(t));
    // du / u = (pi / 2) cosh t dt
    total += integrand(scaled, u) * (Math.PI / 2) * Math.cosh(t);
  }
  return Math.min(1, Math.max(0, 0.5 + (total * STEP) / Math.PI));
}

function integrand(weights: readonly number[], u: number): number {
  let angle = 0;
  let logarithm = 0;
  for (const weight of weights) {
    const product = weight * u;
    angle += Math.atan(product);
    logarithm += Math.abs(product) > 1e150 ? 2 * Math.log(Math.abs(product)) : Math.log1p(product * product);
  }
  return Math.sin(angle / 2) * Math.exp(-logarithm / 4);
}
