import { gramsIn } from '../model/units.ts';

/**
 * A weight in g from its digits in another unit. Grams stay as they are; kg and mg shift the decimal point in
 * the digits themselves, so that no rounding creeps in; oz and lb are one multiplication by an exact factor.
 */
export function toGrams(value: number, unit: string, digits = String(value)): number {
  if (unit === 'g') return value;
  if (unit === 'kg' || unit === 'mg') {
    const text = digits.replace(',', '.');
    if (/^\d+(\.\d+)?$/.test(text)) return Number(`${text}e${unit === 'kg' ? '3' : '-3'}`);
  }
  return value * (gramsIn[unit] ?? 1);
}
