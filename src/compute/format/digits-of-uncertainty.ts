/**
 * The finest decimal place that is no finer than a standard uncertainty: the smallest power of ten that is
 * not below it. 0.42 gives the units' place, 0.083 the first decimal.
 *
 * @returns digits after the decimal point; negative where even the units are uncertain
 * @example digitsOfUncertainty(0.083) // 1
 */
export function digitsOfUncertainty(uncertainty: number): number {
  if (!(uncertainty > 0 && Number.isFinite(uncertainty))) {
    throw new RangeError(`digitsOfUncertainty requires a positive number, not ${String(uncertainty)}`);
  }
  // The tolerance keeps an uncertainty of exactly 0.1 at one decimal although 0.1 has no exact binary form.
  return -Math.ceil(Math.log10(uncertainty) - 1e-9) + 0;
}
