/** Letters and digits, which go on with a word. */
const inWord = '[\\p{L}\\p{N}]';

/** A list of phrases as one pattern; a star stands for the rest of a word. Matches nothing where the list is empty. */
export function phrases(list: readonly string[]): RegExp {
  const known = patterns.get(list);
  if (known !== undefined) return known;
  const made =
    list.length === 0 ? /(?!)/gu : new RegExp(`(?<!${inWord})(?:${alternatives(list)})(?!${inWord})`, 'giu');
  patterns.set(list, made);
  return made;
}

/** The words of a language are asked for by every sentence: each list is made a pattern once. */
const patterns = new WeakMap<readonly string[], RegExp>();
const sources = new WeakMap<readonly string[], string>();

/** A list of phrases as the source of a pattern, the longest first, so that "better than" is not read as "better". */
export function alternatives(list: readonly string[]): string {
  const known = sources.get(list);
  if (known !== undefined) return known;
  const made = [...list]
    .sort((a, b) => b.length - a.length)
    .map(phrase)
    .join('|');
  sources.set(list, made);
  return made;
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
  const last = asked.get(list);
  if (last?.text === text) return last.answer;
  const answer = text.search(phrases(list)) !== -1;
  asked.set(list, { text, answer });
  return answer;
}

/** What was asked last of each list: every number of a sentence asks the same of it. */
const asked = new WeakMap<readonly string[], { text: string; answer: boolean }>();
