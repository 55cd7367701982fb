import type { Sentence } from '../prose/passage.ts';
import { typedMultiples } from './typed-multiples.ts';
import { numberSource, numbersRead, type NumberRead } from './number-typed.ts';
import { alternatives } from './phrases.ts';
import type { QuantityWords } from './quantity-words.ts';
import type { Manner, TypedQuantity } from './typed-quantity.ts';
import { numberInWords, wordedSource } from './worded-number.ts';
import { type UnitTyped, unitAt, unitSource } from './unit-typed.ts';

/** Every weight, yield and percentage that a sentence holds as typed by hand, in its order. */
export function typedQuantities(sentence: Sentence, words: QuantityWords): TypedQuantity[] {
  const { text } = sentence;
  const multiples = typedMultiples(text, words).map((each): TypedQuantity => {
    return { ...each, manner: mannerBefore(text.slice(0, each.index), words) };
  });
  const found = [...inText(text, words), ...inCells(sentence, words), ...multiples];
  return joinedPounds(found, text).sort((a, b) => a.index - b.index);
}

function numberPattern(words: QuantityWords): string {
  return `(?<![\\p{L}\\p{N}.,/])(?:${numberSource}|(?:${wordedSource(words)})(?=[\\s-]))`;
}

function readsOf(text: string, words: QuantityWords): readonly NumberRead[] {
  return numberInWords(text, words) ?? numbersRead(text);
}

function inText(text: string, words: QuantityWords): TypedQuantity[] {
  const number = numberPattern(words);
  const whole = new RegExp(`(${number})([\\s-]*)(?=${unitSource(words)})`, 'giu');
  return [...text.matchAll(whole)].flatMap(({ index, 0: all, 1: typed = '' }) => {
    const unitIndex = index + all.length;
    const unit = unitAt(text.slice(unitIndex), words);
    if (unit === null) return [];
    const end = unitIndex + unit.length;
    const group = joinedBefore(text, index, number, words);
    const first = group[0]?.index ?? index;
    const manner = mannerBefore(text.slice(0, first), words);
    const last = group.length === 0 ? manner : group[0]!.manner;
    const unitText = text.slice(unitIndex, end);
    const make = (at: number, numberText: string, how: Manner): TypedQuantity => ({
      index: at,
      end,
      text: at === index ? text.slice(index, end) : `${numberText} ${unitText}`,
      numbers: readsOf(numberText, words),
      ...pick(unit),
      ...directionOf(unit, text.slice(end), words),
      unit: unitText,
      manner: how,
    });
    const before = group.map((each, place) =>
      make(each.index, each.text, each.manner === 'range' ? 'range' : place === 0 ? manner : each.manner),
    );
    const own = last === 'spread' || last === 'range' ? group.at(-1)!.manner : manner;
    return [
      ...before.map((each) => (each.manner === 'spread' ? { ...each, manner } : each)),
      make(index, typed, own),
    ];
  });
}

const pick = ({ dimension, factor, per }: UnitTyped) => ({ dimension, factor, per });

/** "39% more", "39% less": what the first word behind a percentage says of it. */
function directionOf(
  { dimension }: UnitTyped,
  after: string,
  words: QuantityWords,
): Pick<TypedQuantity, 'direction'> {
  if (dimension !== '%') return {};
  const said = (list: readonly string[]): boolean =>
    new RegExp(`^\\s+(?:${alternatives(list)})(?!\\p{L})`, 'iu').test(after);
  if (said(words.more)) return { direction: 'more' };
  return said(words.less) ? { direction: 'less' } : {};
}

/** Numbers that share the unit of the one behind them: "120 to 150 g", "152, 138 and 120 g", "152 ± 12 g". */
function joinedBefore(
  text: string,
  end: number,
  number: string,
  words: QuantityWords,
): { index: number; text: string; manner: Manner }[] {
  const joins = alternatives(words.joined);
  const pattern = new RegExp(`(${number})\\s*(–|—|-|±|\\+/-|,|\\s(?:${joins})\\s)\\s*$`, 'iu');
  const found: { index: number; text: string; manner: Manner }[] = [];
  const from = Math.max(0, end - farthestJoined);
  let rest = text.slice(from, end);
  for (let match = pattern.exec(rest); match !== null; match = pattern.exec(rest)) {
    const [, joined = '', join = ''] = match;
    // A comma goes on only with a list that ends in "and"; a number before it else belongs elsewhere.
    if (join === ',' && found.length === 0) break;
    const spread = join === '±' || join === '+/-';
    const listed = join === ',' || /^\s*(?:and|or|y|o)\s*$/i.test(join);
    found.unshift({
      index: from + match.index,
      text: joined,
      manner: spread ? 'spread' : listed ? 'exact' : 'range',
    });
    if (!listed) break;
    rest = rest.slice(0, match.index);
  }
  return found;
}

/** How far before a unit the first of the numbers that share it may stand, in characters. */
const farthestJoined = 200;
/** As long as any words that say how closely a number is meant. */
const longestManner = 60;

function mannerBefore(whole: string, words: QuantityWords): Manner {
  const before = whole.slice(-longestManner);
  const ends = (list: readonly string[]): boolean =>
    new RegExp(`(?<![\\p{L}])(?:${alternatives(list)})[\\s(]*$`, 'iu').test(before) || false;
  if (/[~≈]\s*$/.test(before)) return 'about';
  if (ends(words.over) || /[>≥]\s*$/.test(before)) return 'over';
  if (ends(words.under) || /[<≤]\s*$/.test(before)) return 'under';
  return ends(words.about) ? 'about' : 'exact';
}

/** Bare numbers of a table whose column's heading names the unit. */
function inCells({ passage, text, index }: Sentence, words: QuantityWords): TypedQuantity[] {
  return (passage.cells ?? []).flatMap((cell) => {
    const start = cell.index - index;
    const typed = text.slice(start, start + cell.length);
    const bare = new RegExp(`^\\s*(${numberSource})\\s*$`, 'u').exec(typed);
    const unit = bare && unitInHeading(cell.heading, words);
    if (!bare || !unit) return [];
    const at = start + typed.indexOf(bare[1]!);
    const quantity = {
      index: at,
      end: at + bare[1]!.length,
      numbers: numbersRead(bare[1]!),
      manner: 'exact' as const,
    };
    return [{ ...quantity, text: `${bare[1]!} ${unit.text}`, unit: unit.text, ...pick(unit.unit) }];
  });
}

function unitInHeading(heading: string, words: QuantityWords): { text: string; unit: UnitTyped } | null {
  const starts = [...heading.matchAll(new RegExp(`(?:^|(?<=[\\s(,/\\[]))${unitSource(words)}`, 'giu'))];
  for (const { index } of starts.reverse()) {
    const unit = unitAt(heading.slice(index), words);
    if (unit !== null) return { text: heading.slice(index, index + unit.length), unit };
  }
  return null;
}

/** "1 lb 4 oz" is one weight, told to the ounce. */
function joinedPounds(found: readonly TypedQuantity[], text: string): TypedQuantity[] {
  const joined: TypedQuantity[] = [];
  for (const each of found) {
    const last = joined.at(-1);
    const pounds = last !== undefined && Math.abs(last.factor / each.factor - 16) < 1e-9;
    if (
      !pounds ||
      each.dimension !== 'g' ||
      !/^[\s,]*(?:(?:and|y)\s+)?$/.test(text.slice(last.end, each.index))
    ) {
      joined.push(each);
      continue;
    }
    const numbers = each.numbers.map(({ value, step }) => ({
      value: value + 16 * last.numbers[0]!.value,
      step,
    }));
    joined.splice(-1, 1, {
      ...each,
      index: last.index,
      text: text.slice(last.index, each.end),
      numbers,
      manner: last.manner,
    });
  }
  return joined;
}
