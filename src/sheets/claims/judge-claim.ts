import type { Measure } from '../../compute/tables/measures.ts';
import { headlineMeasure } from '../../compute/headline-measure.ts';
import type { Cultivar, TrialWithFindings } from '../../model/library.ts';
import type { Findings } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import type { Sentence } from '../prose/passage.ts';
import type { Claim } from './claim-in.ts';
import type { ClaimWords } from './claim-words.ts';
import { levelsInSentence, type NamedLevel } from './named-levels.ts';
import { says } from './phrases.ts';
import { type Judged, judgePair } from './told-apart.ts';

/** What a trial answers to a claim. */
export type Answer =
  /** It bears the claim out, or the claim is none about its treatments. */
  | { kind: 'borne out' }
  | { kind: 'not tested'; pair: Judged | null }
  | { kind: 'not told apart'; pair: Judged }
  /** It told the two apart, the other way round. */
  | { kind: 'the reverse'; pair: Judged };

/** Judges a claim of a sentence by a trial: by the pair that is named, else by the check, else by all. */
export function judgeClaim(
  whole: Sentence,
  claim: Claim,
  { trial, findings }: TrialWithFindings & { findings: Findings },
  cultivars: readonly Cultivar[],
  words: ClaimWords,
): Answer {
  const sentence = whole.text;
  const named = levelsInSentence(whole, trial, cultivars, words);
  const comparing = named.length > 0 || says(sentence, words.comparing);
  if (!comparing && (claim.weak || says(sentence, words.elsewhere))) return { kind: 'borne out' };
  const { measure, cut } = spokenMeasure(sentence, trial, findings, words);
  const judge = (a: NamedLike, b: NamedLike): Judged =>
    judgePair(findings, measure, cut, { [a.factor]: a.level }, { [b.factor]: b.level });
  if (named.length === 0 && claim.overAll && oneStandsOut(claim, trial, judge)) return { kind: 'borne out' };
  const judged = pairsOf(claim, named, trial).map(([a, b]) => judge(a, b));
  if (judged.length === 0 || judged.every(({ verdict }) => verdict === 'not tested')) {
    const tested = judged.length === 0 && findings.inference.some(({ verdict }) => verdict === 'tested');
    return tested ? { kind: 'borne out' } : { kind: 'not tested', pair: judged[0] ?? null };
  }
  return answerOf(claim, judged, named, sentence, words);
}

type NamedLike = Pick<NamedLevel, 'factor' | 'level'>;

/** Whether a level was told apart from all others: "the heaviest of four" is then so, whichever it is. */
function oneStandsOut(claim: Claim, trial: Trial, judge: (a: NamedLike, b: NamedLike) => Judged): boolean {
  const [factor] = trial.metadata.factors ?? [];
  const levels = (factor?.levels ?? []).map(({ id }) => ({ factor: factor!.id, level: id }));
  return levels.some((one) => {
    const others = levels.filter((other) => other !== one);
    return others.length > 0 && others.every((other) => judge(one, other).verdict === claim.direction);
  });
}

function answerOf(
  claim: Claim,
  judged: readonly Judged[],
  named: readonly NamedLevel[],
  sentence: string,
  words: ClaimWords,
): Answer {
  const unsure = judged.find(({ verdict }) => verdict === 'not told apart' || verdict === 'not tested');
  const others = new Set(named.map(({ level }) => level)).size < 2;
  const told = judged.filter(({ verdict }) => verdict === 'more' || verdict === 'less');
  // With nobody named to compare with, one that is told apart bears out "better", and all must be for "heaviest".
  const all = claim.overAll || says(sentence, words.everyOne);
  if (unsure !== undefined && (all || !others || told.length === 0))
    return { kind: 'not told apart', pair: unsure };
  const { before, behind } = around(claim, named);
  const alone = others && (claim.overAll ? named.length > 0 : before.length > 0);
  if (alone && claim.direction !== 'unlike' && !(claim.weak && says(sentence, words.elsewhere))) {
    // "Slate Egret was heavier": than one of the others at least.
    const against = told.find(({ verdict }) => verdict !== claim.direction);
    if (against === undefined || (!claim.overAll && told.some(({ verdict }) => verdict === claim.direction)))
      return { kind: 'borne out' };
    return unsure === undefined
      ? { kind: 'the reverse', pair: against }
      : { kind: 'not told apart', pair: unsure };
  }
  // Which are spoken of is known where some stand before the claim and others behind it.
  if (claim.direction === 'unlike' || before.length === 0 || behind.length === 0)
    return { kind: 'borne out' };
  const pair = told.find(({ verdict }) => verdict !== claim.direction);
  return pair === undefined ? { kind: 'borne out' } : { kind: 'the reverse', pair };
}

function around(
  { index }: Claim,
  named: readonly NamedLevel[],
): { before: NamedLevel[]; behind: NamedLevel[] } {
  return {
    before: named.filter((each) => each.index < index),
    behind: named.filter((each) => each.index > index),
  };
}

/** Which pairs a claim is about: those of the levels named, of the one named and the others, or all. */
export function pairsOf(claim: Claim, named: readonly NamedLevel[], trial: Trial): [NamedLike, NamedLike][] {
  const factors = trial.metadata.factors ?? [];
  const factor = factors.find(({ id }) => named.some((each) => each.factor === id)) ?? factors[0];
  if (factor === undefined) return [];
  const of = named.filter((each) => each.factor === factor.id);
  const levels = factor.levels.map(({ id }) => ({ factor: factor.id, level: id }));
  const [first, ...rest] = of;
  if (first === undefined)
    return levels.flatMap((a, at) => levels.slice(at + 1).map((b): [NamedLike, NamedLike] => [a, b]));
  const others = levels.filter(({ level }) => level !== first.level);
  if (rest.length === 0 || claim.overAll) return others.map((b) => [first, b]);
  const { before, behind } = around(claim, of);
  if (before.length > 0 && behind.length > 0)
    return before.flatMap((a) => behind.map((b): [NamedLike, NamedLike] => [a, b]));
  return rest.map((b) => [first, b]);
}

/** The measure and the cut that a sentence speaks of; those of the headline where it names none. */
export function spokenMeasure(
  sentence: string,
  trial: Trial,
  findings: Findings,
  words: ClaimWords,
): { measure: Measure; cut: number | 'all' } {
  const cut = findings.treatments_by_cut.find((each) =>
    says(sentence, words.cuts[String(each.cut)] ?? []),
  )?.cut;
  const measures = Object.entries(words.measures).filter(([, list]) => says(sentence, list));
  const spoken = measures.find(([measure]) =>
    findings.inference.some((each) => each.measure === measure),
  )?.[0];
  return { measure: (spoken as Measure | undefined) ?? headlineMeasure(trial), cut: cut ?? 'all' };
}
