import { held, type Sentence } from '../prose/passage.ts';
import { syllables } from './syllables.ts';

/** The words of a sentence; a component is one, since it prints a number or a name. */
export function wordsOf(text: string): string[] {
  return text.match(new RegExp(`${held}|[\\p{L}\\p{N}][\\p{L}\\p{N}'’-]*(?:[.,]\\d+)*`, 'gu')) ?? [];
}

/** Fewer words than this give no grade that means anything. */
const fewestWords = 60;

/**
 * The school grade of a text after Flesch and Kincaid: 0.39 (words / sentences) + 11.8 (syllables / words) - 15.59.
 * Null for a text of fewer than 60 words. Numbers and what components print count as words of one syllable.
 *
 * Kincaid, J. P., Fishburne, R. P., Rogers, R. L. and Chissom, B. S. (1975). Derivation of new readability
 * formulas for Navy enlisted personnel. Research Branch Report 8-75, Naval Technical Training Command, Millington.
 */
export function readingGrade(sentences: readonly Pick<Sentence, 'text'>[]): number | null {
  const words = sentences.map(({ text }) => wordsOf(text)).filter((each) => each.length > 0);
  const all = words.flat();
  if (all.length < fewestWords) return null;
  const heard = all.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (all.length / words.length) + 11.8 * (heard / all.length) - 15.59;
}
