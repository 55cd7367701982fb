import type { InBothUnits } from './format-quantity.ts';
import { unitName } from './unit-name.ts';
import { usUnit } from './us-unit.ts';

/**
 * A unit's name in metric and in US customary units, for the heading of a column of bare numbers.
 *
 * @example unitInBoth('kg/m2') // { metric: "kg/m²", us: "lb/ft²" }
 */
export function unitInBoth(unit: string): InBothUnits {
  return { metric: unitName(unit), us: usUnit(unit)?.unit ?? null };
}
