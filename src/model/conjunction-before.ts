import { language } from './language.ts';

const alike: Readonly<Record<string, readonly [sound: RegExp, instead: string]>> = {
  y: [/^["«“]?h?[ií](?![aeou])/i, 'e'],
  o: [/^["«“]?(?:h?[oó]|8|11(?!\d))/i, 'u'],
};

/**
 * The word for "and" or "or" before a word that is put into a message: Spanish writes e for y, and u for o, where
 * the next word begins with that sound.
 *
 * @example conjunctionBefore('Iceberg', 'y') // "e" in Spanish
 */
export function conjunctionBefore(word: string, conjunction: string): string {
  const [sound, instead] = alike[conjunction] ?? [];
  return instead !== undefined && language() === 'es' && sound?.test(word) === true ? instead : conjunction;
}
