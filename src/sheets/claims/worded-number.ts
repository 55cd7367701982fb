import type { NumberRead } from './number-typed.ts';
import { phrase } from './phrases.ts';
import type { QuantityWords } from './quantity-words.ts';

type Words = Pick<QuantityWords, 'numbers' | 'and'>;

/** Number words by size, the longest first. */
function wordsOf({ numbers }: Words, from: number, below: number): string {
  return Object.entries(numbers)
    .filter(([, value]) => Number.isInteger(value) && value >= from && value < below)
    .map(([word]) => word)
    .sort((a, b) => b.length - a.length)
    .map(phrase)
    .join('|');
}

/** How a number is written in words, as the source of a pattern: `half`, `seven`, `one hundred and eighty-two`. */
export function wordedSource(words: Words): string {
  const single = wordsOf(words, 1, 10);
  const tens = `(?:${wordsOf(words, 20, 100)})(?:(?:-|\\s+(?:(?:${words.and.join('|')})\\s+)?)(?:${single}))?`;
  const belowHundred = `(?:${tens}|${wordsOf(words, 10, 20)}|${single})`;
  const hundreds = `(?:${wordsOf(words, 100, Infinity)})(?:\\s+(?:(?:${words.and.join('|')})\\s+)?${belowHundred})?`;
  const others = Object.keys(words.numbers)
    .filter((word) => !Number.isInteger((words.numbers as Readonly<Record<string, number>>)[word]))
    .sort((a, b) => b.length - a.length)
    .map(phrase)
    .join('|');
  return `${others}|${hundreds}|${belowHundred}`;
}

/**
 * The value of a number in words; null for anything else.
 *
 * @example numberInWords('one hundred and eighty-two', quantityWords('en')) // [{ value: 182, step: 1 }]
 */
export function numberInWords(text: string, words: Words): readonly NumberRead[] | null {
  const numbers = words.numbers as Readonly<Record<string, number>>;
  let rest = text.toLowerCase().replaceAll(/\s+/g, ' ').trim();
  if (Object.hasOwn(numbers, rest))
    return [{ value: numbers[rest]!, step: Number.isInteger(numbers[rest]!) ? 1 : 0.25 }];
  let value = 0;
  while (rest !== '') {
    const word = Object.keys(numbers)
      .filter((each) => rest === each || rest.startsWith(`${each} `) || rest.startsWith(`${each}-`))
      .reduce((longest, each) => (each.length > longest.length ? each : longest), '');
    if (word === '') return null;
    value += numbers[word]!;
    rest = rest
      .slice(word.length)
      .replace(new RegExp(`^[\\s-]+(?:(?:${words.and.join('|')})\\s+)?`, 'u'), '');
  }
  return [{ value, step: 1 }];
}
