import { formatNumber, type NumberStyle } from './format-number.ts';
import type { InBothUnits } from './format-quantity.ts';
import { unitName } from './unit-name.ts';
import { usDigits, usUnit } from './us-unit.ts';

/** A limit beside zero must not print as zero: whether an interval crosses zero is what is read off it. */
const furtherDigits = 3;

function digitsThatKeepTheSign(values: readonly number[], digits: number): number {
  const lost = (value: number, tried: number) =>
    value !== 0 && Number(value.toFixed(Math.max(0, tried))) === 0;
  let enough = digits;
  while (enough < digits + furtherDigits && values.some((value) => lost(value, enough))) enough += 1;
  return enough;
}

/**
 * Two limits with their unit once, in metric and in US units. Where a limit would round to zero, both are
 * printed with more digits.
 *
 * @example formatRange(140, 165, 'g', 0).metric // "140 to 165 g"
 */
export function formatRange(
  lower: number,
  upper: number,
  unit: string,
  digits: number,
  style: NumberStyle = {},
): InBothUnits {
  const written = (limits: readonly [number, number], name: string, places: number) => {
    const enough = digitsThatKeepTheSign(limits, places);
    const [from, to] = limits.map((limit) => formatNumber(limit, enough, style));
    return `${from!} to ${to!}${name === '' ? '' : `\u00A0${name}`}`;
  };
  const us = usUnit(unit);
  return {
    metric: written([lower, upper], unitName(unit), digits),
    us:
      us &&
      written([lower * us.factor + us.offset, upper * us.factor + us.offset], us.unit, usDigits(us, digits)),
  };
}
