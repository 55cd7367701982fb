/** Unit values as whole numbers: value = constant + integer / scale, exactly as the decimals were written. */
export interface ExactIntegers {
  readonly integers: readonly number[];
  readonly scale: number;
}

/** Most significant digits of a weight that are taken as written; the rest is rounding of a conversion. */
const DIGITS = 15;

/**
 * Turns unit means, given as totals and counts, into whole numbers on one scale, as small as they can be,
 * so that sums of them compare without rounding: two arrangements with the same sum are then seen to tie.
 * `room` is how much larger than all of them together sums may yet become and must stay exact; where 15
 * significant digits leave too little of it, fewer are kept.
 *
 * @example exactIntegers([0.1, 0.5], [1, 3], 1) // {integers: [0, 1], scale: 15}: 1/10 and 1/6 differ by 1/15
 */
export function exactIntegers(
  totals: readonly number[],
  counts: readonly number[],
  room: number,
): ExactIntegers {
  const common = counts.reduce((multiple, count) => leastCommonMultiple(multiple, count), 1);
  const written = totals.map((total) => Number(total.toPrecision(DIGITS)));
  const largest = Math.max(...written.map(Math.abs)) || 1;
  const needed = Math.max(0, ...written.map(decimalsOf));
  for (let digits = DIGITS; digits > 0; digits--) {
    const decimals = Math.min(needed, digits - 1 - Math.floor(Math.log10(largest)));
    const wholes = written.map((value, i) => scaledInteger(value, decimals) * BigInt(common / counts[i]!));
    const steps = wholes.map((value) => value - wholes[0]!);
    const step = steps.reduce(
      (divisor, value) => greatestCommonDivisor(divisor, value < 0n ? -value : value),
      0n,
    );
    const smallest = steps.map((value) => (step === 0n ? 0n : value / step));
    const middle = smallest.reduce((sum, value) => sum + value, 0n) / BigInt(smallest.length);
    const integers = smallest.map((value) => Number(value - middle));
    const size = integers.reduce((sum, value) => sum + Math.abs(value), 0);
    if (size * room > Number.MAX_SAFE_INTEGER) continue;
    return { integers, scale: (10 ** decimals * common) / (Number(step) || 1) };
  }
  throw new Error('exactIntegers: the units are too many, or too uneven in size, for exact comparison');
}

/** The least common multiple of two positive whole numbers. */
export function leastCommonMultiple(a: number, b: number): number {
  return (a / Number(greatestCommonDivisor(BigInt(a), BigInt(b)))) * b;
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestCommonDivisor(b, a % b);
}

function decimalsOf(value: number): number {
  const [mantissa, exponent] = value.toExponential().split('e') as [string, string];
  return (mantissa.split('.')[1] ?? '').length - Number(exponent);
}

/** A value times a power of ten, from its digits; rounded where they go further. */
function scaledInteger(value: number, decimals: number): bigint {
  const [mantissa, exponent] = value.toExponential().split('e') as [string, string];
  const [whole, fraction = ''] = mantissa.split('.') as [string, string?];
  const shift = decimals + Number(exponent) - fraction.length;
  const digits = BigInt(whole + fraction);
  if (shift >= 0) return digits * 10n ** BigInt(shift);
  const divisor = 10n ** BigInt(-shift);
  const half = digits < 0n ? -divisor / 2n : divisor / 2n;
  return (digits + half) / divisor;
}
