import type { Report } from '../../check/rule.ts';
import sheetClaimedSameness from '../../check/rules/sheet-claimed-sameness.ts';
import { showText } from '../../check/show-value.ts';
import { inLanguage } from '../../model/language.ts';
import { say } from '../../model/say.ts';
import type { Sentence } from '../prose/passage.ts';
import { spokenOf } from './check-claims.ts';
import type { ClaimWords } from './claim-words.ts';
import { honestWords } from './honest-words.ts';
import type { Answer } from './judge-claim.ts';
import { judgeSameness } from './judge-sameness.ts';
import { samenessIn } from './sameness-in.ts';
import type { SheetClaims } from './sheet-claims.ts';

type Refused = Exclude<Answer, { kind: 'borne out' }>;

/**
 * Reports a claim that treatments give the same. No analysis here tests for sameness, so that no trial bears one
 * out: not to be told apart is less than that.
 */
export function checkSameness(
  sentence: Sentence,
  sheet: SheetClaims,
  words: ClaimWords,
  report: Report,
): void {
  const claim = samenessIn(sentence.text, words);
  if (claim === null) return;
  for (const trial of spokenOf(sentence, sheet)) {
    const answer = judgeSameness(sentence, claim, trial, sheet.library.cultivars, words);
    if (answer.kind === 'borne out') continue;
    const wording = honestWords(answer, trial, sheet.library.cultivars);
    report(sheetClaimedSameness, {
      file: sheet.file,
      place: sentence.place(claim.index),
      found: claim.text,
      expected: wording,
      message: inLanguage(sheet.told, () => messages[answer.kind](showText(claim.text), wording)),
    });
    return;
  }
}

/** The sentence to write instead is in the language of the sheet. */
const messages: Readonly<Record<Refused['kind'], (claim: string, wording: string) => string>> = {
  'not tested': (claim, wording) =>
    say('{claim} claims that they give the same, which the trial did not test; write "{wording}"', {
      claim,
      wording,
    }),
  'not told apart': (claim, wording) =>
    say(
      '{claim} claims that they give the same, which not telling them apart does not show; write "{wording}"',
      { claim, wording },
    ),
  'the reverse': (claim, wording) =>
    say('{claim} claims that they give the same, and the trial told them apart; write "{wording}"', {
      claim,
      wording,
    }),
};
