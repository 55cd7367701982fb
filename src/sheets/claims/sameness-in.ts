import { isTakenBack } from './claim-in.ts';
import type { ClaimWords } from './claim-words.ts';
import { phrases, says } from './phrases.ts';

/** A claim that treatments give the same: where it stands in the sentence, and its words. */
export interface Sameness {
  index: number;
  text: string;
}

/** How far behind a claim, and before it, the words may stand that soften it, in characters. */
const near = 40;

/** What the sameness is of: "no difference in weight that this trial could see". */
const ofWhat = /^(?:in|of|de|en)\s+(?:el\s+|la\s+)?\p{L}+\s+/iu;

/**
 * The first claim of sameness in a sentence that speaks of what treatments gave; null where there is none. Those
 * softened, taken back, asked or hedged are none.
 */
export function samenessIn(sentence: string, words: ClaimWords): Sameness | null {
  if (/\?["'”’»)\]]*\s*$/.test(sentence) || says(sentence, words.unclaimed)) return null;
  if (says(sentence, words.qualities)) return null;
  const strong = [...sentence.matchAll(phrases(words.same))];
  const weak = says(sentence, words.outcomes) ? [...sentence.matchAll(phrases(words.weakSame))] : [];
  const claims = [...strong, ...weak].sort((a, b) => a.index - b.index || b[0].length - a[0].length);
  const softened = new RegExp(`${phrases(words.softened).source}\\s*$`, 'iu');
  const claim = claims.find(({ index, 0: text }) => {
    const before = sentence.slice(Math.max(0, index - near), index);
    const after = sentence
      .slice(index + text.length)
      .trimStart()
      .slice(0, near);
    const reports = [after, after.replace(ofWhat, '')].some(
      (behind) => behind.search(phrases(words.sameNotBefore)) === 0,
    );
    if (softened.test(before) || reports) return false;
    return !isTakenBack(sentence, { index }, words);
  });
  return claim === undefined ? null : { index: claim.index, text: claim[0] };
}
