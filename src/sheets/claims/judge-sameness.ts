import type { Cultivar, TrialWithFindings } from '../../model/library.ts';
import type { Findings } from '../../model/findings.ts';
import type { Sentence } from '../prose/passage.ts';
import type { ClaimWords } from './claim-words.ts';
import { type Answer, pairsOf, spokenMeasure } from './judge-claim.ts';
import { levelsInSentence } from './named-levels.ts';
import { says } from './phrases.ts';
import type { Sameness } from './sameness-in.ts';
import { judgePair } from './told-apart.ts';

/** What a trial answers to a claim that treatments give the same: what it says of the pair that is furthest from it. */
export function judgeSameness(
  whole: Sentence,
  { index, text }: Sameness,
  { trial, findings }: TrialWithFindings & { findings: Findings },
  cultivars: readonly Cultivar[],
  words: ClaimWords,
): Answer {
  const sentence = whole.text;
  const named = levelsInSentence(whole, trial, cultivars, words);
  if (named.length === 0 && !says(sentence, words.comparing)) return { kind: 'borne out' };
  // "Slate Egret gave the same at both ends": places and seasons are compared, not treatments.
  if (named.length < 2 && says(sentence, words.sameElsewhere)) return { kind: 'borne out' };
  const { measure, cut } = spokenMeasure(sentence, trial, findings, words);
  const claim = { index, text, direction: 'unlike', overAll: false, weak: false } as const;
  const judged = pairsOf(claim, named, trial)
    .map(([a, b]) => judgePair(findings, measure, cut, { [a.factor]: a.level }, { [b.factor]: b.level }))
    .filter(({ estimate }) => estimate !== 0);
  const apart = judged.find(({ verdict }) => verdict === 'more' || verdict === 'less');
  if (apart !== undefined) return { kind: 'the reverse', pair: apart };
  const unsure = judged.find(({ verdict }) => verdict === 'not told apart');
  if (unsure !== undefined) return { kind: 'not told apart', pair: unsure };
  const [untested] = judged;
  return untested === undefined ? { kind: 'borne out' } : { kind: 'not tested', pair: untested };
}
