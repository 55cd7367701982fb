import { say } from '../model/say.ts';

const longest = 60;

/** Characters that a reader would not see: controls, no-break and zero-width spaces, direction marks. */
const unseen = /[\p{Cc}\p{Cf}\u00a0\u2000-\u200a\u2028\u2029\u202f\u205f\u3000]/gu;

const short: Readonly<Record<string, string>> = { '\n': '\\n', '\r': '\\r', '\t': '\\t' };

/** A text in which every unseen character shows, as \n, \t or \u{a0}. */
export function escapeUnseen(text: string): string {
  return text.replaceAll(unseen, (character) => {
    const code = character.codePointAt(0) ?? 0;
    return short[character] ?? `\\u{${code.toString(16)}}`;
  });
}

/** A value cut at 60 characters. */
export function cut(text: string): string {
  const characters = [...text.slice(0, 4 * longest)];
  if (characters.length <= longest && text.length <= 4 * longest) return text;
  return `${characters.slice(0, longest).join('')}...`;
}

/** A cell's text as problems quote it: in double quotes, at most 60 characters, unseen characters escaped. */
export function showText(text: string): string {
  return `"${escapeUnseen(cut(text))}"`;
}

/** Any value as problems quote it. */
export function showValue(value: unknown): string {
  if (typeof value === 'string') return showText(value);
  if (value === undefined || value === null) return say('nothing');
  if (Array.isArray(value)) return value.length === 0 ? say('an empty list') : say('a list');
  if (typeof value === 'object')
    return Object.keys(value).length === 0 ? say('an empty mapping') : say('a mapping');
  return escapeUnseen(cut(String(value)));
}
