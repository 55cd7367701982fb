import type { Seasons } from '../model/generated/seasons.ts';
import { tUpperQuantile } from '../statistics/distributions/student-t.ts';
import { meanOf } from '../statistics/mean.ts';
import { sum } from '../statistics/sum.ts';

const alpha = 0.05;

/** How far a cultivar's line lay above the trials' mean, in the entry's unit, with 95% limits. */
export interface EndOfLine {
  estimate: number;
  lower: number;
  upper: number;
}

/**
 * A cultivar's regression on the trials' means, read at the poorest and at the best of its trials: how far it
 * lay above the mean there. Null where there is no line or no error of one.
 *
 * Reference: N. R. Draper and H. Smith (1998), Applied Regression Analysis, 3rd ed., section 3.1 (a line's standard error).
 */
export function steadinessEnds(
  entry: Seasons,
  cultivar: string,
): { poor: EndOfLine; good: EndOfLine } | null {
  const row = entry.stability.find((each) => each.cultivar === cultivar);
  const { regression_slope: slope = null, deviation_mean_square: variance = null } = row ?? {};
  if (slope === null || variance === null) return null;
  const trials = new Map(entry.trials.map((trial) => [trial.id, trial]));
  const points = entry.cells.flatMap(({ cultivar: of, trial, mean }) => {
    const { adjusted_mean: index = null, cultivars = 0 } = trials.get(trial) ?? {};
    return of === cultivar && index !== null && cultivars > 1 ? [{ index, mean }] : [];
  });
  const centre = meanOf(points.map(({ index }) => index));
  const middle = meanOf(points.map(({ mean }) => mean));
  const spread = sum(points.map(({ index }) => (index - centre) ** 2));
  const quantile = tUpperQuantile(alpha / 2, points.length - 2);
  const at = (index: number): EndOfLine => {
    const estimate = middle + slope * (index - centre) - index;
    const reach = quantile * Math.sqrt(variance * (1 / points.length + (index - centre) ** 2 / spread));
    return { estimate, lower: estimate - reach, upper: estimate + reach };
  };
  const indexes = points.map(({ index }) => index);
  return { poor: at(Math.min(...indexes)), good: at(Math.max(...indexes)) };
}
