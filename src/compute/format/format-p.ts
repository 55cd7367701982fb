import { formatNumber } from './format-number.ts';

/**
 * A probability with its sign, to three decimals: "p = 0.018", "p < 0.001", "p > 0.999". Where three
 * decimals would print as exactly the level although p lies beside it, more are printed, so that no p below
 * the level reads as if it were not.
 *
 * @param p from 0 to 1; throws outside
 * @param alpha the level that p is held against
 * @example formatP(0.0183) // "p = 0.018"
 */
export function formatP(p: number, alpha = 0.05): string {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`formatP requires a probability, not ${String(p)}`);
  if (p < 0.001) return `p\u00A0<\u00A0${formatNumber(0.001, 3)}`;
  if (p > 0.999) return `p\u00A0>\u00A0${formatNumber(0.999, 3)}`;
  let digits = 3;
  while (p !== alpha && Number(p.toFixed(digits)) === alpha && digits < 15) digits += 1;
  return `p\u00A0=\u00A0${formatNumber(p, digits)}`;
}
