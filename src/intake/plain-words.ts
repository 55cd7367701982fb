/** A text without accents, case and punctuation, as words with one space between. */
export function plainWords(text: string): string {
  return text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}%/]+/gu, ' ')
    .trim();
}
