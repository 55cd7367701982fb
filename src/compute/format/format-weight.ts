import { formatQuantity } from './format-quantity.ts';
import type { NumberStyle } from './format-number.ts';

/**
 * A weight in grams, in metric and US units: g beside oz.
 *
 * @param digits digits after the decimal point in grams
 * @example formatWeight(150, 0) // { metric: "150 g", us: "5.3 oz" }
 */
export function formatWeight(
  grams: number,
  digits: number,
  style: NumberStyle = {},
): { metric: string; us: string } {
  const { metric, us } = formatQuantity(grams, 'g', digits, style);
  return { metric, us: us ?? '' };
}
