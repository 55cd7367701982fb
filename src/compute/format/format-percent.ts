import { language, type Language } from '../../model/language.ts';
import { formatNumber, type NumberStyle } from './format-number.ts';

/** What stands between a number and its percent sign: nothing in English, a space in Spanish. */
const gaps: Readonly<Record<Language, string>> = { en: '', es: '\u00A0' };

/**
 * A percentage, given in percent.
 *
 * @example formatPercent(12.44) // "12.4%"
 */
export function formatPercent(percent: number, digits = 1, style: NumberStyle = {}): string {
  return `${formatNumber(percent, digits, style)}${gaps[language()]}%`;
}
