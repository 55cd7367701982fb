import { sum } from '../sum.ts';

/** Below this share of the sum of squares around zero, a sum of squares is rounding of the values. */
const SHARE_OF_SQUARES = 1e-28;
/** Below this share of the sum of squares around the mean, nothing is left to be tested against. */
const SHARE_OF_VARIATION = 1e-20;

/**
 * The size at and below which an error sum of squares is rounding noise, from the responses: values that
 * are all alike, or fitted exactly, leave squares of their last binary digit (about 1e-32 of their own
 * square), and an F of such squares means nothing. Data far from zero, a thousand million times their own
 * spread, still count.
 */
export function roundingNoise(responses: readonly number[]): number {
  const mean = sum(responses) / responses.length;
  const aroundZero = sum(responses.map((value) => value * value));
  const aroundMean = sum(responses.map((value) => (value - mean) ** 2));
  return Math.max(SHARE_OF_SQUARES * aroundZero, SHARE_OF_VARIATION * aroundMean);
}
