import type { ClaimWords } from './claim-words.ts';
import { phrases, says } from './phrases.ts';

/** A claim of a difference, as a sentence makes it. */
export interface Claim {
  /** Where it stands in the sentence, and its words. */
  index: number;
  text: string;
  /** Which of the two gave more; `unlike` where the words do not say. */
  direction: 'more' | 'less' | 'unlike';
  /** True where one is set above or below all others. */
  overAll: boolean;
  /** True for a word of other uses, which claims something only where treatments are spoken of. */
  weak: boolean;
}

/** The lists of words that claim, with what they claim. */
const kinds: readonly [keyof ClaimWords, Omit<Claim, 'index' | 'text'>][] = [
  ['most', { direction: 'more', overAll: true, weak: false }],
  ['least', { direction: 'less', overAll: true, weak: false }],
  ['weakMost', { direction: 'more', overAll: true, weak: true }],
  ['weakLeast', { direction: 'less', overAll: true, weak: true }],
  ['less', { direction: 'less', overAll: false, weak: false }],
  ['more', { direction: 'more', overAll: false, weak: false }],
  ['difference', { direction: 'unlike', overAll: false, weak: false }],
  ['weakLess', { direction: 'less', overAll: false, weak: true }],
  ['weakMore', { direction: 'more', overAll: false, weak: true }],
];

/** The claims of a difference that a sentence makes, in its order. Those taken back, asked or hedged are none. */
export function claimsIn(sentence: string, words: ClaimWords): Claim[] {
  if (/\?["'”’»)\]]*\s*$/.test(sentence) || says(sentence, words.unclaimed)) return [];
  const all = kinds.flatMap(([list, kind]) =>
    [...sentence.matchAll(phrases(words[list] as readonly string[]))].map(({ index, 0: text }): Claim => ({
      index,
      text,
      ...kind,
    })),
  );
  return withoutOverlaps(all)
    .filter((claim) => !isTakenBack(sentence, claim, words) && !isOtherUse(sentence, claim, words))
    .sort((a, b) => a.index - b.index);
}

/** "outyielded by" is not "outyielded" as well. */
function withoutOverlaps(claims: readonly Claim[]): Claim[] {
  const taken = new Set<number>();
  return claims
    .toSorted((a, b) => b.text.length - a.text.length)
    .filter(({ index, text }) => {
      const places = Array.from({ length: text.length }, (_, at) => index + at);
      if (places.some((place) => taken.has(place))) return false;
      for (const place of places) taken.add(place);
      return true;
    });
}

const reach = 6;
/** How far from a claim the words may stand that take it back, in characters: longer than any sentence. */
const farthest = 500;

/** True where words before a claim take it back, or say that it is only supposed. */
export function isTakenBack(sentence: string, { index }: Pick<Claim, 'index'>, words: ClaimWords): boolean {
  const before = sentence.slice(Math.max(0, index - farthest), index);
  if (says(lastPart(before, words.hedgeBoundaries), words.hedges)) return true;
  // "No cultivar, old or new, outyielded the check."
  const opening = /^\s*(\S*)/.exec(sentence.slice(0, Math.min(index, farthest)))?.[1] ?? '';
  const near = lastPart(before, words.boundaries).trim().split(/\s+/).slice(-reach).join(' ');
  return [opening, near].some(
    (text) =>
      says(text, words.negations) && !says(lastPart(before, words.hedgeBoundaries), words.stillClaims),
  );
}

/** As long as any phrase of the lists. */
const longestPhrase = 60;

function isOtherUse(sentence: string, { index, text, weak }: Claim, words: ClaimWords): boolean {
  const after = sentence.slice(index + text.length, index + text.length + farthest);
  const next = after.trim().split(/\s+/).slice(0, 2).join(' ');
  const begins = (list: readonly string[]): boolean => {
    const at = next.search(phrases(list));
    return at === 0;
  };
  if (begins(words.notBefore)) return true;
  // "the heaviest head" is one head, whichever words say so, and "heavier heads than" a claim.
  const further = after.trim().split(/\s+/).slice(1, 5).join(' ');
  if (begins(words.singles) && !says(further, words.than)) return true;
  if (!weak) return false;
  const before = sentence.slice(Math.max(0, index - farthest), index);
  const last = new RegExp(`${phrases(words.notAfter).source}$`, 'iu');
  const ends = last.test(before.trimEnd().slice(-longestPhrase));
  const part = lastPart(before, words.hedgeBoundaries) + text + firstPart(after, words);
  return ends || says(part, words.qualities);
}

/** What stands behind the last of some words. */
function lastPart(text: string, boundaries: readonly string[]): string {
  const found = [...text.matchAll(boundaryPattern(boundaries))].at(-1);
  return found === undefined ? text : text.slice(found.index + found[0].length);
}

function firstPart(text: string, { hedgeBoundaries }: ClaimWords): string {
  const [found] = text.matchAll(boundaryPattern(hedgeBoundaries));
  return found === undefined ? text : text.slice(0, found.index);
}

function boundaryPattern(boundaries: readonly string[]): RegExp {
  const words = boundaries.filter((each) => /^\p{L}/u.test(each));
  const marks = boundaries.filter((each) => !/^\p{L}/u.test(each));
  return new RegExp(
    `${marks.map((mark) => mark.replaceAll(' ', '\\s+')).join('|')}|${phrases(words).source}`,
    'giu',
  );
}
