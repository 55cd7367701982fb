import { normalUpperQuantile } from './distributions/normal.ts';

/**
 * Wilson's score interval of a proportion, such as the plants that survived out of those set. No trials give
 * null with a reason.
 *
 * @param successes a whole number from 0 to trials
 * @param level the chance of coverage, above 0 and below 1
 *
 * Reference: E. B. Wilson (1927), Probable inference, the law of succession, and statistical inference, Journal
 * of the American Statistical Association 22, 209-212.
 *
 * @example wilsonInterval(0, 10).upper // 0.2775327998628892
 */
export function wilsonInterval(
  successes: number,
  trials: number,
  level = 0.95,
):
  | { proportion: number; lower: number; upper: number }
  | { proportion: null; lower: null; upper: null; reason: string } {
  const whole = Number.isInteger(successes) && Number.isInteger(trials);
  if (!whole || successes < 0 || successes > trials) {
    throw new RangeError(
      `wilsonInterval requires whole counts, 0 <= successes <= trials, not ${successes}, ${trials}`,
    );
  }
  if (!(level > 0 && level < 1)) {
    throw new RangeError(`wilsonInterval requires a level between 0 and 1, not ${level}`);
  }
  if (trials === 0) {
    return { proportion: null, lower: null, upper: null, reason: 'a proportion of none cannot be had' };
  }
  const z = normalUpperQuantile((1 - level) / 2);
  const proportion = successes / trials;
  const centre = (successes + (z * z) / 2) / (trials + z * z);
  const reach = (z / (trials + z * z)) * Math.sqrt((successes * (trials - successes)) / trials + (z * z) / 4);
  return {
    proportion,
    lower: successes === 0 ? 0 : centre - reach,
    upper: successes === trials ? 1 : centre + reach,
  };
}
