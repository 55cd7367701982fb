import { numberSource, numbersRead, type NumberRead } from './number-typed.ts';
import { alternatives, says } from './phrases.ts';
import type { QuantityWords } from './quantity-words.ts';
import type { TypedQuantity } from './typed-quantity.ts';
import { numberInWords, wordedSource } from './worded-number.ts';

/** Every "twice the weight", "1.8 times as much" and "half as much" of a sentence, as typed. */
export function typedMultiples(text: string, words: QuantityWords): Omit<TypedQuantity, 'manner'>[] {
  const single = alternatives(Object.keys(words.multiples));
  const counted = `(?:${numberSource}|${wordedSource(words)})[\\s-]*(?:${alternatives(words.times)})`;
  const ends = `(?:${alternatives(words.endsMultiple)})`;
  // Not "twice as much water": what stands behind is the other treatment, or the end of the thought.
  const end = `(?:(?<=\\s${ends})|(?=\\s*(?:[.,;:!?)]|$)|\\s+${ends}(?!\\p{L})))`;
  // "dio el doble" says it all, and "dio el doble de plantas" something else.
  const twofold = `(${alternatives(words.twofold)})(?=\\s*(?:[.,;:!?)]|$))`;
  const whole = new RegExp(
    `(?<![\\p{L}\\p{N}.,/])(?:(?:(${alternatives(words.againAsMuch)})|(${single}|${counted})\\s+(?:${alternatives([...words.asMuch, ...words.asMuchOf])}))(?!\\p{L})${end}|${twofold})`,
    'giu',
  );
  return [...text.matchAll(whole)].flatMap(({ index, 0: all, 1: again, 2: multiple = '', 3: twice }) => {
    // "The EC was twice that of" is of no weight.
    const ofAnother = new RegExp(`\\s(?:${alternatives(words.asMuchOf)})$`, 'iu').test(all);
    if (ofAnother && !says(text.slice(0, index), words.yieldPercents)) return [];
    const half = { value: 1.5, step: 0.25 };
    const numbers =
      twice !== undefined
        ? [{ value: 2, step: 0.5 }]
        : again === undefined
          ? readsOf(multiple, words)
          : [half];
    return numbers.length === 0
      ? []
      : [
          {
            index,
            end: index + all.length,
            text: all,
            numbers,
            dimension: 'times' as const,
            factor: 1,
            unit: words.times[0] ?? '',
            per: null,
          },
        ];
  });
}

/** A multiple in whole numbers is told to the half, and a half to the quarter. */
function readsOf(typed: string, words: QuantityWords): readonly NumberRead[] {
  const text = typed.toLowerCase().replaceAll(/\s+/g, ' ');
  const named = (words.multiples as Readonly<Record<string, number>>)[text];
  if (named !== undefined) return [{ value: named, step: named < 1 ? 0.25 : 0.5 }];
  const number = text.replace(new RegExp(`[\\s-]*(?:${alternatives(words.times)})$`, 'u'), '');
  const read = numberInWords(number, words) ?? numbersRead(number);
  return read.map(({ value, step }) => ({ value, step: Math.min(step, 0.5) }));
}
