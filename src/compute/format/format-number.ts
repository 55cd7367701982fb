import { language, type Language } from '../../model/language.ts';

/** Narrow no-break space (U+202F): groups digits without suggesting a decimal sign. */
export const groupingSpace = '\u202F';
/** The minus sign (U+2212), as wide as a figure. */
export const minusSign = '\u2212';

/** How a number is written. */
export interface NumberStyle {
  /** A plus sign before numbers above zero. */
  plus?: boolean;
}

/** The sign between units and tenths (SI Brochure, 9th edition, 5.4.4: the point or the comma, by custom). */
export const decimalSigns: Readonly<Record<Language, string>> = { en: '.', es: ',' };

/**
 * A number for reading: fixed decimals, a real minus sign, groups of three parted by a narrow space from
 * five figures on (SI Brochure, 9th edition, 5.4.4; a lone group of four is left whole). Rounded by
 * toFixed, which every engine computes alike; negative digits round to tens. Zero carries no sign. Throws
 * for a number that is not finite: those are never published.
 *
 * @param digits digits after the decimal point, -6 to 20
 * @example formatNumber(-12345.678, 1) // "−12 345.7", with a narrow space
 */
export function formatNumber(value: number, digits: number, style: NumberStyle = {}): string {
  if (!Number.isFinite(value))
    throw new RangeError(`formatNumber requires a finite number, not ${String(value)}`);
  const coarse = 10 ** Math.max(0, -digits);
  const size = Math.abs(value);
  const written = (coarse === 1 ? size : Math.round(size / coarse) * coarse).toFixed(Math.max(0, digits));
  const [whole = '0', decimals] = written.split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, groupingSpace) : whole;
  const unsigned = decimals === undefined ? grouped : grouped + decimalSigns[language()] + decimals;
  if (Number(written) === 0) return unsigned;
  if (value < 0) return minusSign + unsigned;
  return style.plus === true ? `+${unsigned}` : unsigned;
}
