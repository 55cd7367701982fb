import { formatNumber } from '../../compute/format/format-number.ts';
import { formatP } from '../../compute/format/format-p.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { say } from '../../model/say.ts';

const alpha = 0.05;

/** Whether the cultivars' differences changed from trial to trial by more than the trials' own error. */
export function interactionSentence({ interaction }: Pick<Seasons, 'interaction'>): string {
  if (interaction === null || interaction.f === null || interaction.p === null) {
    return say(
      'Whether the differences changed from trial to trial by more than chance cannot be tested: that takes two replicated trials with cultivars in common.',
    );
  }
  const { f, df, error_df: errorDf, p, trials } = interaction;
  const test = say('(cultivar × trial, F = {f} on {df} and {errorDf} degrees of freedom, {p})', {
    f: formatNumber(f, 2),
    df,
    errorDf: formatNumber(errorDf, 1),
    p: formatP(p, alpha),
  });
  return say(
    p < alpha
      ? 'Among the {trials} replicated trials the differences between cultivars changed by more than the error within the trials explains {test}: which cultivar does better hangs on the season or the place.'
      : 'Among the {trials} replicated trials the differences between cultivars changed by no more than the error within the trials explains {test}.',
    { trials, test },
  );
}
