/** Letters and digits, which go on with a word. */
const inWord = '[\\p{L}\\p{N}]';

/** A list of phrases as one pattern; a star stands for the rest of a word. Matches nothing where the list is empty. */
export function phrases(list: readonly string[]): RegExp {
  if (list.length === 0) return /(?!)/gu;
  // The longest first, so that "better than" is not read as "better".
  const sorted = [...list].sort((a, b) => b.length - a.length);
  return new RegExp(`(?<!${inWord})(?:${sorted.map(phrase).join('|')})(?!${inWord})`, 'giu');
}

/** One phrase as the source of a pattern. */
export function phrase(text: string): string {
  return text
    .replaceAll(/[.+?^${}()|[\]\\]/g, '\\$&')
    .replaceAll('*', `${inWord}*`)
    .replaceAll(' ', '\\s+')
    .replaceAll("'", "['’]");
}

/** True where any phrase of a list stands in a text. */
export function says(text: string, list: readonly string[]): boolean {
  return text.search(phrases(list)) !== -1;
}
