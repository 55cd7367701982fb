import { say } from '../../model/say.ts';
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
 * Two limits as bare numbers, in metric and in US units. Where a limit would round to zero, both are printed
 * with more digits.
 */
export function formatLimits(
  lower: number,
  upper: number,
  unit: string,
  digits: number,
  style: NumberStyle = {},
): { lower: InBothUnits; upper: InBothUnits } {
  const written = (limits: readonly [number, number], places: number) => {
    const enough = digitsThatKeepTheSign(limits, places);
    return limits.map((limit) => formatNumber(limit, enough, style));
  };
  const us = usUnit(unit);
  const inUs = (limit: number) => limit * us!.factor + us!.offset;
  const metric = written([lower, upper], digits);
  const american = us && written([inUs(lower), inUs(upper)], usDigits(us, digits));
  return {
    lower: { metric: metric[0]!, us: american?.[0] ?? null },
    upper: { metric: metric[1]!, us: american?.[1] ?? null },
  };
}

/**
 * Two limits with their unit once, in metric and in US units.
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
  const limits = formatLimits(lower, upper, unit, digits, style);
  const written = (from: string, to: string, name: string) =>
    say('{from} to {to}', { from, to }) + (name === '' ? '' : `\u00A0${name}`);
  const us = usUnit(unit);
  return {
    metric: written(limits.lower.metric, limits.upper.metric, unitName(unit)),
    us: us && written(limits.lower.us ?? '', limits.upper.us ?? '', us.unit),
  };
}
