import data from './claim-words.json' with { type: 'json' };

/** The words that claim a difference, and those that take a claim back, of one language. */
export interface ClaimWords {
  /** What is spoken of gave more, or less, than what stands behind the word. */
  more: readonly string[];
  less: readonly string[];
  /** They differ, whichever way. */
  difference: readonly string[];
  /** Words of other uses: claims only where treatments are spoken of. */
  weakMore: readonly string[];
  weakLess: readonly string[];
  /** What is spoken of gave more, or less, than all others. */
  most: readonly string[];
  weakMost: readonly string[];
  least: readonly string[];
  weakLeast: readonly string[];
  /** Words by which a sentence speaks of treatments without naming one. */
  comparing: readonly string[];
  check: readonly string[];
  /** Words that speak of several treatments and of each: "both newcomers". */
  everyOne: readonly string[];
  /** Places, cuts and seasons: where no treatment is spoken of, a claim is about these. */
  elsewhere: readonly string[];
  /** Words before and behind which a weak word claims nothing: "at best", "better light". */
  notAfter: readonly string[];
  notBefore: readonly string[];
  /** Single plants: "the heaviest head" is one head. Not so where a comparison follows: "heavier heads than". */
  singles: readonly string[];
  than: readonly string[];
  /** What is not weighed, and is the author's own to judge: taste, looks, tip burn. */
  qualities: readonly string[];
  negations: readonly string[];
  /** Negations in form that claim all the same: "not only". */
  stillClaims: readonly string[];
  /** Words behind which nothing is claimed yet: "whether". */
  hedges: readonly string[];
  /** Words that say that nothing is claimed. */
  unclaimed: readonly string[];
  /** What is spoken of gives as much as what stands behind the word. */
  same: readonly string[];
  /** Words of other uses: claims only where the sentence speaks of an outcome. */
  weakSame: readonly string[];
  outcomes: readonly string[];
  /** Words before a claim of sameness that say that it is not meant exactly. */
  softened: readonly string[];
  /** Words behind one that make it the honest report of a test. */
  sameNotBefore: readonly string[];
  /** Where one treatment is named, a claim of sameness beside these is about them. */
  sameElsewhere: readonly string[];
  /** How far a negation reaches, and a hedge. */
  boundaries: readonly string[];
  hedgeBoundaries: readonly string[];
  cuts: Readonly<Record<string, readonly string[]>>;
  measures: Readonly<Record<string, readonly string[]>>;
  /** Levels that are numbers, in words. */
  levels: Readonly<Record<string, number>>;
}

/** Those of a language; null where there is no list for it, so that no claim is looked for. */
export function claimWords(language: string): ClaimWords | null {
  const primary = language.split('-')[0]?.toLowerCase() ?? '';
  return Object.hasOwn(data, primary) ? data[primary as keyof typeof data] : null;
}
