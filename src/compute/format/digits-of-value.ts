import { digitsOfUncertainty } from './digits-of-uncertainty.ts';

/** A step is a plain decimal where so many significant digits write it; others come from converted units. */
const significant = 999;

/**
 * Decimals of a single reading: those of the scale's smallest step and no more, so that 5 g steps print 150
 * and 0.5 g steps print 150.5. A step that is no plain decimal (0.1 oz are 2.8349523125 g) prints to the
 * place of the rounding's standard uncertainty, step / sqrt(12) (JCGM 100:2008, F.2.2.1). Without a known
 * step, none beyond the unit. Throws for a step that is not a positive number.
 *
 * @param resolution the scale's smallest step, in the unit that is printed
 * @returns how many digits to print after the decimal point, 0 to 12
 * @example digitsOfValue(0.5) // 1
 */
export function digitsOfValue(resolution: number | null): number {
  if (resolution === null) return 0;
  if (!(resolution > 0 && Number.isFinite(resolution))) {
    throw new RangeError(`digitsOfValue requires a positive step, not ${String(resolution)}`);
  }
  for (let digits = 0; digits <= 12; digits += 1) {
    const steps = resolution * 10 ** digits;
    const whole = Math.round(steps);
    if (whole > 0 && Math.abs(steps - whole) < 1e-9 * steps && (digits === 0 || whole <= significant)) {
      return digits;
    }
  }
  return Math.min(12, Math.max(0, digitsOfUncertainty(resolution / Math.sqrt(12))));
}
