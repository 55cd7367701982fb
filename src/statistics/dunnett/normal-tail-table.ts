import { normalDensity, normalUpperTail } from '../distributions/normal.ts';

/** Beyond this either way the tail is 0 or 1 to the accuracy of the table. */
const far = 8;
const perUnit = 64;

/** The tail and its slope, from place to place, one after the other. */
const table = Float64Array.from({ length: 2 * (2 * far * perUnit + 1) }, (_, index) => {
  const z = Math.floor(index / 2) / perUnit - far;
  return index % 2 === 0 ? normalUpperTail(z) : -normalDensity(z) / perUnit;
});

/**
 * The chance that a standard normal exceeds z, within 1e-10, by cubic interpolation between tabulated values and
 * slopes: for sums over very many points, in a quarter of the time of the exact function.
 */
export function tabulatedUpperTail(z: number): number {
  if (z >= far) return 0;
  if (z <= -far) return 1;
  const place = (z + far) * perUnit;
  const index = Math.floor(place);
  const part = place - index;
  const value = table[2 * index]!;
  const slope = table[2 * index + 1]!;
  const change = table[2 * index + 2]! - value;
  const bend = slope + table[2 * index + 3]! - 2 * change;
  return value + part * (slope + part * (change - slope - bend + part * bend));
}
