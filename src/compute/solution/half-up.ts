/**
 * Rounded as on paper, a half upwards. Labels and weights are short decimals, so that halves are common, and their
 * binary neighbours would often round down: 0.645 g/L of 19 % is 122.55 mg/L, printed 122.6.
 *
 * @param value of at most twelve figures that mean something, at least 0
 * @example halfUp(122.55, 1) // 122.6
 */
export function halfUp(value: number, digits: number): number {
  const scale = 10 ** digits;
  return Math.round(Number((value * scale).toPrecision(12))) / scale;
}
