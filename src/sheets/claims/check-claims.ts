import type { Report } from '../../check/rule.ts';
import sheetClaimedDifference from '../../check/rules/sheet-claimed-difference.ts';
import { showText } from '../../check/show-value.ts';
import type { Findings } from '../../model/findings.ts';
import { inLanguage } from '../../model/language.ts';
import type { TrialWithFindings } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import { allSeasons, identityOf } from '../../publish/crop-comparisons.ts';
import type { Sentence } from '../prose/passage.ts';
import { type Claim, claimsIn } from './claim-in.ts';
import type { ClaimWords } from './claim-words.ts';
import { honestWords } from './honest-words.ts';
import { type Answer, judgeClaim } from './judge-claim.ts';
import { says } from './phrases.ts';
import type { SheetClaims } from './sheet-claims.ts';

type Finished = TrialWithFindings & { findings: Findings };
type Refused = Exclude<Answer, { kind: 'borne out' }>;

/** Reports claims of a difference in a sentence that no trial it speaks of bears out: one at most. */
export function checkClaims(sentence: Sentence, sheet: SheetClaims, words: ClaimWords, report: Report): void {
  const trials = spokenOf(sentence, sheet);
  if (trials.length === 0) return;
  for (const claim of claimsIn(sentence.text, words)) {
    const refused = refusedBy(sentence, claim, trials, sheet, words);
    if (refused === null) continue;
    const wording = honestWords(refused.answer, refused.trial, sheet.library.cultivars);
    report(sheetClaimedDifference, {
      file: sheet.file,
      place: sentence.place(claim.index),
      found: claim.text,
      expected: wording,
      message: inLanguage(sheet.told, () => messages[refused.answer.kind](showText(claim.text), wording)),
    });
    return;
  }
}

/** The sentence to write instead is in the language of the sheet. */
const messages: Readonly<Record<Refused['kind'], (claim: string, wording: string) => string>> = {
  'not tested': (claim, wording) =>
    say('{claim} claims a difference that the trial did not test; write "{wording}"', { claim, wording }),
  'not told apart': (claim, wording) =>
    say('{claim} claims a difference that the trial cannot tell from none; write "{wording}"', {
      claim,
      wording,
    }),
  'the reverse': (claim, wording) =>
    say('{claim} claims the reverse of what the trial found; write "{wording}"', { claim, wording }),
};

/** The first trial's answer where none bears the claim out; null where one does, or the seasons together do. */
function refusedBy(
  sentence: Sentence,
  claim: Claim,
  trials: readonly Finished[],
  { library, own }: SheetClaims,
  words: ClaimWords,
): { answer: Refused; trial: Finished } | null {
  let first: { answer: Refused; trial: Finished } | null = null;
  for (const trial of trials) {
    const answer = judgeClaim(sentence, claim, trial, library.cultivars, words);
    if (answer.kind === 'borne out') return null;
    first ??= { answer, trial };
  }
  if (own !== null && trials.length === 1) return first;
  const { name } = identityOf(library);
  const told = allSeasons(library).some(({ differences }) =>
    differences.some(({ a, b, lower, upper }) => {
      const apart = lower !== null && upper !== null && lower * upper > 0;
      return apart && [a, b].every((cultivar) => says(sentence.text, [name(cultivar)]));
    }),
  );
  return told ? null : first;
}

/** The trials that a sentence is about: those that it names, else those of its paragraph, else those of the sheet. */
export function spokenOf(sentence: Sentence, { trials }: SheetClaims): Finished[] {
  const finished = trials.filter((item): item is Finished => item.findings !== null);
  const within = (text: string, components: Sentence['components']): Finished[] =>
    finished.filter(({ trial }) => {
      const asked = components.some(({ component }) =>
        component.attributes.some(({ name, value }) => name === 'trial' && value === trial.id),
      );
      return asked || text.includes(trial.metadata.title);
    });
  const own = within(sentence.text, sentence.components);
  if (own.length > 0) return own;
  const around = within(sentence.passage.text, sentence.passage.components);
  return around.length > 0 ? around : finished;
}
