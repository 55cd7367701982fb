/** No finer decimals than these are looked for. */
const finestScale = 1e9;

/**
 * Recorded weights are decimals: 1000000.1 cannot be stored exactly, but ten of it can. Where all values are
 * decimals of at most nine places (each the double nearest to its decimal) this returns them as whole numbers,
 * which add and subtract without any rounding, and the power of ten they were multiplied by. Null where some
 * value is no such decimal, or too large to be a whole number exactly.
 *
 * @example wholeNumbers([1.2, 0.35]) // { whole: [120, 35], scale: 100 }
 */
export function wholeNumbers(
  values: readonly number[] | Float64Array,
): { whole: Float64Array; scale: number } | null {
  let scale = 1;
  for (const value of values) {
    while (Math.round(value * scale) / scale !== value) {
      scale *= 10;
      if (scale > finestScale) return null;
    }
  }
  const whole = new Float64Array(values.length);
  for (let index = 0; index < values.length; index += 1) {
    const value = values[index]!;
    const multiple = Math.round(value * scale);
    if (Math.abs(multiple) > 2 ** 52 || multiple / scale !== value) return null;
    whole[index] = multiple;
  }
  return { whole, scale };
}
