import { listed } from '../../compute/words/words.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { tUpperQuantile } from '../../statistics/distributions/student-t.ts';
import { leastTrials } from '../steadiness.ts';

const alpha = 0.05;

/** How steady the cultivars were in plain words, or why that cannot be judged: a sentence each. */
export function steadinessSentences(entry: Seasons, name: (cultivar: string) => string): string[] {
  if (entry.stability.length === 0) {
    const several = entry.trials.filter(({ cultivars }) => cultivars > 1).length;
    const there = several === 1 ? 'there is one' : `there are ${several}`;
    return [
      `How steady a cultivar is cannot be judged: that takes at least ${leastTrials} trials that grew the same several cultivars, and of trials with several cultivars ${several === 0 ? 'there is none' : there}.`,
    ];
  }
  const told = entry.stability.flatMap(({ cultivar, regression_slope: slope, slope_se: se, trials }) => {
    if (slope === null || se === null || trials < 3) return [];
    const reach = tUpperQuantile(alpha / 2, trials - 2) * se;
    const side = slope - reach > 1 ? 'above' : slope + reach < 1 ? 'below' : 'beside';
    return [{ cultivar: name(cultivar), side }];
  });
  const named = (side: string) => told.filter((each) => each.side === side).map(({ cultivar }) => cultivar);
  const [above, below] = [named('above'), named('below')];
  const rest = above.length + below.length > 0 ? 'The others' : 'The cultivars';
  return [
    ...(above.length === 0
      ? []
      : [`${listed(above)} gained more than the others in good seasons and lost more in poor ones.`]),
    ...(below.length === 0
      ? []
      : [`${listed(below)} gained less than the others in good seasons and lost less in poor ones.`]),
    ...(above.length + below.length < told.length
      ? [`${rest} followed good and poor seasons too much alike to be told apart in this.`]
      : []),
  ];
}
