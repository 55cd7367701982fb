import { meanOf } from './mean.ts';
import { sum } from './sum.ts';
import { wholeNumbers } from './whole-numbers.ts';

/** Values less their centre, multiplied by `scale`: small numbers, whole where the values are decimals. */
export interface Centred {
  deviations: Float64Array;
  scale: number;
}

/**
 * Takes the mean (for decimals: the whole number nearest to it, so that nothing is rounded) out of the values,
 * as the first step of every sum of squares. What is left is near 0 but need not sum to 0.
 */
export function centred(values: readonly number[] | Float64Array): Centred {
  if (values.length === 0) return { deviations: new Float64Array(0), scale: 1 };
  const decimals = wholeNumbers(values);
  const from = decimals?.whole ?? Float64Array.from(values);
  const centre = decimals ? Math.round(sum(from) / from.length) : meanOf(from);
  return { deviations: from.map((value) => value - centre), scale: decimals?.scale ?? 1 };
}
