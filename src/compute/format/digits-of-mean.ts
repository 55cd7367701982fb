import { digitsOfUncertainty } from './digits-of-uncertainty.ts';
import { digitsOfValue } from './digits-of-value.ts';

/**
 * Decimals of a mean (and of the standard deviation and limits beside it) of n readings.
 *
 * A reading on a scale with steps r carries a standard uncertainty of r / sqrt(12) from its rounding alone
 * (JCGM 100:2008, Guide to the expression of uncertainty in measurement, F.2.2.1), a mean of n such readings
 * r / sqrt(12 n). The last digit printed is never finer than that, since a finer digit would tell about the
 * scale's rounding and not about the plants (ibid. 7.2.6: no excessive number of digits), and never coarser
 * than the reading's own last digit. A mean of 12 weights read to 5 g is printed to 1 g, of 12 read to 1 g
 * to 0.1 g.
 *
 * @param resolution the scale's smallest step, in the unit that is printed; null where it is not known
 * @param n how many readings went into the mean
 * @returns how many digits to print after the decimal point
 * @example digitsOfMean(5, 12) // 0
 */
export function digitsOfMean(resolution: number | null, n: number): number {
  if (!(n >= 1)) throw new RangeError(`digitsOfMean requires at least one reading, not ${String(n)}`);
  if (resolution === null) return 1;
  const own = digitsOfValue(resolution);
  return n === 1 ? own : Math.max(own, digitsOfUncertainty(resolution / Math.sqrt(12 * n)));
}
