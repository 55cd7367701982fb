import { say } from '../model/say.ts';
import type { Summary } from '../model/findings.ts';
import { coefficientOfVariation } from '../statistics/coefficient-of-variation.ts';
import { confidenceIntervalOfMean } from '../statistics/confidence-interval-of-mean.ts';
import { fiveNumberSummary } from '../statistics/five-number-summary.ts';
import { mean } from '../statistics/mean.ts';
import { standardDeviation } from '../statistics/standard-deviation.ts';
import { standardError } from '../statistics/standard-error.ts';
import type { Yield } from './yields.ts';

/**
 * Describes some yields, in their own unit (the coefficient of variation in percent). Unknown yields are
 * counted as missing and left out; yields left out on purpose are not counted.
 *
 * @param withheld why there is no standard error and no interval of the mean: they have a meaning only where
 *   these values are the replicates of the treatment; null where they are
 */
export function summaryOf(yields: readonly Yield[], withheld: string | null): Summary {
  const counted = yields.filter(({ value, unknown }) => value !== null || unknown);
  const values = counted.map(({ value }) => value);
  const average = mean(values);
  const five = fiveNumberSummary(values);
  const interval = confidenceIntervalOfMean(values);
  const reasons: string[] = [];
  if (average.value === null) reasons.push(say('No weight is known.'));
  else if (average.n < 2) reasons.push(say('One value has no spread.'));
  if (withheld !== null) reasons.push(withheld);
  const replicates = withheld === null;
  return {
    n: average.n,
    mean: average.value,
    sd: standardDeviation(values).value,
    se: replicates ? standardError(values).value : null,
    cv: coefficientOfVariation(values).value,
    minimum: five.minimum,
    lower_quartile: five.lowerQuartile,
    median: five.median,
    upper_quartile: five.upperQuartile,
    maximum: five.maximum,
    ci95: replicates && interval.lower !== null ? [interval.lower, interval.upper] : null,
    missing: average.missing,
    ...(reasons.length > 0 ? { reason: reasons.join(' ') } : {}),
  };
}

/** Why a standard error is withheld. */
export const notReplicates = (): string =>
  say('These are not the replicates, so a standard error would say too much.');
export const marksNotAmounts = (): string =>
  say('Scores are marks, not amounts, so a standard error of their mean would say too much.');
