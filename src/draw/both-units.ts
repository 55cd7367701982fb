import type { InBothUnits } from '../compute/format/format-quantity.ts';
import { type Attributes, element, escapeText } from './svg.ts';

/**
 * A quantity that follows the page's units switch: both are shown until the reader chooses (the classes are
 * those of the pages' own text).
 */
export function bothUnits(quantity: InBothUnits): string {
  if (quantity.us === null) return escapeText(quantity.metric);
  return (
    element('tspan', { class: 'metric' }, escapeText(quantity.metric)) +
    element('tspan', { class: 'either' }, ' · ') +
    element('tspan', { class: 'us' }, escapeText(quantity.us))
  );
}

/** A line of text that holds a quantity between escaped words. */
export function quantityLabel(
  before: string,
  quantity: InBothUnits,
  after: string,
  attributes: Attributes,
): string {
  return element('text', attributes, escapeText(before), bothUnits(quantity), escapeText(after));
}
