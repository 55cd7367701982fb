import { formatNumber, type NumberStyle } from './format-number.ts';

/**
 * A percentage, given in percent.
 *
 * @example formatPercent(12.44) // "12.4%"
 */
export function formatPercent(percent: number, digits = 1, style: NumberStyle = {}): string {
  return `${formatNumber(percent, digits, style)}%`;
}
