import type { Seasons } from '../../model/generated/seasons.ts';
import { leastTrials } from '../steadiness.ts';
import { steadinessSentences } from './steadiness-sentences.ts';
import { say } from '../../model/say.ts';

/** How steady one cultivar was over its trials in plain words, or why that cannot be judged. */
export function steadinessSentence(
  entry: Seasons,
  cultivar: string,
  name: (cultivar: string) => string,
): string {
  const stability = entry.stability.filter((each) => each.cultivar === cultivar);
  const [sentence] = stability.length === 0 ? [] : steadinessSentences({ ...entry, stability }, name);
  return (
    sentence ??
    say(
      '{cultivar} stood beside others in fewer than {least} trials, so it cannot be judged how steady it is.',
      {
        cultivar: name(cultivar),
        least: leastTrials,
      },
    )
  );
}
