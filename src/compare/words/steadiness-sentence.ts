import { formatNumber } from '../../compute/format/format-number.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { leastTrials } from '../steadiness.ts';
import { type EndOfLine, steadinessEnds } from '../steadiness-ends.ts';

/** How steady a cultivar was over its trials in plain words, or why that cannot be judged. */
export function steadinessSentence(
  entry: Seasons,
  cultivar: string,
  name: (cultivar: string) => string,
): string {
  const row = entry.stability.find((each) => each.cultivar === cultivar);
  if (!row) {
    return `${name(cultivar)} stood beside others in fewer than ${String(leastTrials)} trials, so it cannot be judged how steady it is.`;
  }
  const ends = steadinessEnds(entry, cultivar);
  if (ends === null || row.regression_slope === null) {
    return `The trials did not differ enough in yield to show how steady ${name(cultivar)} is.`;
  }
  const [good, poor] = [beside(ends.good), beside(ends.poor)];
  const did =
    good === poor
      ? `did ${good} than others in good seasons and poor ones alike`
      : `did ${good} than others in good seasons, ${poor} in poor ones`;
  const error = row.slope_se === null ? '' : ` ± ${formatNumber(row.slope_se, 2)}`;
  return `${name(cultivar)} ${did.replace('no better or worse than others', 'neither better nor worse than others')} (slope ${formatNumber(row.regression_slope, 2)}${error} over ${String(row.trials)} trials).`;
}

/** An end of the line is above or below the trials' mean only where its limits leave out zero. */
function beside({ lower, upper }: EndOfLine): string {
  return lower > 0 ? 'better' : upper < 0 ? 'worse' : 'no better or worse';
}
