import { formatNumber, type NumberStyle } from './format-number.ts';
import { unitName } from './unit-name.ts';
import { usDigits, usUnit } from './us-unit.ts';

/** One number in metric and in US customary units; `us` is null where the trade has no other unit. */
export interface InBothUnits {
  metric: string;
  us: string | null;
}

const withUnit = (number: string, unit: string) => (unit === '' ? number : `${number}\u00A0${unit}`);

/**
 * A quantity with its unit, in metric and in US customary units, both rounded from the full value.
 *
 * @param unit of the value: g, kg/m2, cm, L, L/kg, Cel and others of usUnit; any other is printed as it is
 * @param digits digits after the decimal point in the metric unit; the US digits follow from them
 * @example formatQuantity(3.42, 'kg/m2', 2) // { metric: "3.42 kg/m²", us: "0.700 lb/ft²" }
 */
export function formatQuantity(
  value: number,
  unit: string,
  digits: number,
  style: NumberStyle = {},
): InBothUnits {
  const us = usUnit(unit);
  return {
    metric: withUnit(formatNumber(value, digits, style), unitName(unit)),
    us: us && withUnit(formatNumber(value * us.factor + us.offset, usDigits(us, digits), style), us.unit),
  };
}

/** The numbers alone, for a table or an axis whose heading says the unit. */
export function formatBare(
  value: number,
  unit: string,
  digits: number,
  style: NumberStyle = {},
): InBothUnits {
  const us = usUnit(unit);
  return {
    metric: formatNumber(value, digits, style),
    us: us && formatNumber(value * us.factor + us.offset, usDigits(us, digits), style),
  };
}
