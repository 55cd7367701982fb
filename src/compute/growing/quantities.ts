import { litresIn, metresIn } from '../../model/units.ts';
import { formatBare, formatQuantity, type InBothUnits } from '../format/format-quantity.ts';
import { unitInBoth } from '../format/unit-in-both.ts';

/** Decimals that a number was written with, at most 3: what the grower measured and no more. */
export function digitsAsWritten(value: number): number {
  return Math.min(3, String(value).split('.')[1]?.length ?? 0);
}

/** A volume in both units, litres first. */
export function volumeInBoth({ value, unit }: { value: number; unit: string }): InBothUnits {
  const litres = value * litresIn[unit]!;
  return formatQuantity(litres, 'L', unit === 'L' ? digitsAsWritten(value) : 1);
}

/** A rectangle in both units: "120 × 60 cm". */
export function rectangleInBoth(rectangle: { length: number; width: number; unit: string }): InBothUnits {
  const digits = rectangle.unit === 'cm' ? digitsAsWritten(rectangle.length) : 1;
  const side = (value: number) => formatBare(value * metresIn[rectangle.unit]! * 100, 'cm', digits);
  const [length, width] = [side(rectangle.length), side(rectangle.width)];
  const unit = unitInBoth('cm');
  return {
    metric: `${length.metric} × ${width.metric}\u00a0${unit.metric}`,
    us: `${length.us} × ${width.us}\u00a0${unit.us}`,
  };
}
