import { conjunctionBefore } from './conjunction-before.ts';
import { language } from './language.ts';

/** By the English text: the text in every other language. */
export type Messages = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** Under a registered symbol as the language is; English needs none, so that a browser loads none for it. */
const key = Symbol.for('tankside:messages');
const shelf = globalThis as unknown as Record<symbol, Messages | undefined>;

/** Adds words of other languages: `messages.ts` and `meanings.ts` do it when they are imported. */
export function provideMessages(messages: Messages): void {
  shelf[key] = { ...shelf[key], ...messages };
}

/**
 * The pattern of a message in the language being written. The English text is its own key, so that the code
 * reads as the page does; `messages.json` holds it in every other language, and a test finds what is missing.
 */
export function pattern(english: string): string {
  const now = language();
  return now === 'en' ? english : (shelf[key]?.[english]?.[now] ?? english);
}

/**
 * The program's own words, in the language being written, with the values put in where the message names them.
 *
 * @param english the message in English: the key of messages.json
 * @param values what stands for each `{name}`
 * @example say('cut {number}', { number: 2 }) // "cut 2"
 */
export function say(english: string, values: Readonly<Record<string, string | number>> = {}): string {
  return pattern(english).replace(
    /(?:(?<= )([yo]) )?\{(\w+)\}/g,
    (whole, and: string | undefined, name: string) => {
      if (!Object.hasOwn(values, name)) return whole;
      const value = String(values[name]);
      return and === undefined ? value : `${conjunctionBefore(value, and)} ${value}`;
    },
  );
}

/**
 * A message of its own for one, and one for all other counts, with `{count}` in it.
 *
 * @example sayCount(3, '{count} plant', '{count} plants') // "3 plants"
 */
export function sayCount(
  count: number,
  one: string,
  other: string,
  values: Readonly<Record<string, string | number>> = {},
): string {
  return say(count === 1 ? one : other, { ...values, count });
}
