import { gramsIn, squareMetresInSquareFoot } from '../../model/units.ts';
import { numberSource, numbersRead } from './number-typed.ts';
import { alternatives, phrase } from './phrases.ts';
import type { QuantityWords } from './quantity-words.ts';
import type { Dimension, TypedQuantity } from './typed-quantity.ts';
import { numberInWords, wordedSource } from './worded-number.ts';

/** An international yard is 0.9144 m, and an acre 4840 square yards. */
const squareMetresInSquareYard = 0.9144 ** 2;

const squareMetresIn: Readonly<Record<string, number>> = {
  m2: 1,
  ft2: squareMetresInSquareFoot,
  ha: 10_000,
  yd2: squareMetresInSquareYard,
  acre: 4840 * squareMetresInSquareYard,
};

const areaSigns: Readonly<Record<string, string>> = {
  m2: 'm2|m²|m\\^2|sq\\.? ?m\\b',
  ft2: 'ft2|ft²|sq\\.? ?ft\\.?',
  yd2: 'yd2|yd²|sq\\.? ?yds?\\.?',
  ha: 'ha\\b',
  acre: 'ac\\b',
};

export interface UnitTyped {
  dimension: Dimension;
  factor: number;
  per: TypedQuantity['per'];
  /** How many characters it takes. */
  length: number;
}

/** The words and signs of weights and percent, as the source of a pattern. */
export function unitSource(words: QuantityWords): string {
  const known = unitSources.get(words);
  if (known !== undefined) return known;
  const weights = alternatives([...Object.values(words.weights).flat(), 't', 'tonne', 'tonnes', 'toneladas']);
  const made = `(?:%|${alternatives(words.percent)}|${weights})(?![\\p{L}\\p{N}%])`;
  unitSources.set(words, made);
  return made;
}

const unitSources = new WeakMap<QuantityWords, string>();

/**
 * What a unit is, read on from where it begins; null for one that is no weight, yield or percentage, such as a
 * dose by the litre.
 */
export function unitAt(text: string, words: QuantityWords): UnitTyped | null {
  const base = new RegExp(`^${unitSource(words)}`, 'iu').exec(text)?.[0];
  if (base === undefined) return null;
  const at = base.length;
  if (base === '%' || words.percent.some((each) => new RegExp(`^${phrase(each)}$`, 'iu').test(base)))
    return { dimension: '%', factor: 1, per: null, length: at };
  const grams = gramsOf(base, words);
  if (grams === null) return null;
  const rest = text.slice(at);
  const area = areaAfter(rest, words);
  if (area !== null) {
    const day = new RegExp(
      `^\\.?(?:\\s*/\\s*|\\s+(?:${alternatives(words.per)}|and)\\s+|\\s*)(?:${alternatives(words.day)})(?![\\p{L}])`,
      'iu',
    ).exec(rest.slice(area.length))?.[0];
    const length = at + area.length + (day?.length ?? 0);
    if (day !== undefined)
      return { dimension: 'g/m2/day', factor: grams / area.squareMetres, per: null, length };
    return { dimension: 'kg/m2', factor: grams / 1000 / area.squareMetres, per: null, length };
  }
  // A tonne is no weight that a small trial cuts.
  if (grams >= 1e6) return null;
  const measure = measureAfter(rest, words);
  if (measure !== null) return { dimension: 'g', factor: grams, per: measure.per, length: at };
  // By the litre, by the kilogram, by the week: not a weight that was cut.
  if (new RegExp(`^\\s*(?:/|(?:${alternatives(words.strictPer)})\\s)`, 'iu').test(rest)) return null;
  return { dimension: 'g', factor: grams, per: null, length: at };
}

function gramsOf(base: string, words: QuantityWords): number | null {
  for (const [unit, names] of Object.entries(words.weights)) {
    // Mg is megagram or magnesium, and G no gram.
    if (names.includes(base) || (base.length > 2 && names.includes(base.toLowerCase())))
      return gramsIn[unit]!;
  }
  return /^t(?:onn?e(?:s|ladas)?)?$/.test(base) ? 1e6 : null;
}

interface AreaPattern {
  squareMetres: number;
  /** Its first group is how many of them. */
  pattern: RegExp;
}

const areaPatterns = new WeakMap<QuantityWords, readonly AreaPattern[]>();

function areasOf(words: QuantityWords): readonly AreaPattern[] {
  const known = areaPatterns.get(words);
  if (known !== undefined) return known;
  const count = `(?:(${numberSource}|${wordedSource(words)})\\s*)?`;
  const per = `(?:\\s*/\\s*|\\s+(?:${alternatives(words.per)})\\s+)${count}`;
  const made = Object.entries(squareMetresIn).map(([area, squareMetres]) => {
    const names = alternatives(words.areas[area as keyof QuantityWords['areas']]);
    return {
      squareMetres,
      pattern: new RegExp(`^${per}(?:(?:${areaSigns[area]!})|(?:${names})(?!\\p{L}))`, 'iu'),
    };
  });
  areaPatterns.set(words, made);
  return made;
}

function areaAfter(rest: string, words: QuantityWords): { squareMetres: number; length: number } | null {
  for (const { squareMetres, pattern } of areasOf(words)) {
    const found = pattern.exec(rest);
    if (found === null) continue;
    // "per 100 square feet": the yield of so many of them.
    const many = found[1] === undefined ? 1 : countOf(found[1], words);
    return { squareMetres: squareMetres * many, length: found[0].length };
  }
  const power = /^[\s·]*m(?:[-−]2|⁻²)/u.exec(rest);
  return power === null ? null : { squareMetres: 1, length: power[0].length };
}

function countOf(typed: string, words: QuantityWords): number {
  const [read] = numberInWords(typed, words) ?? numbersRead(typed);
  return read === undefined || read.value <= 0 ? 1 : read.value;
}

function measureAfter(rest: string, words: QuantityWords): { per: NonNullable<TypedQuantity['per']> } | null {
  for (const [per, names] of Object.entries(words.measures)) {
    const pattern = `^(?:\\s*/\\s*|\\s+(?:${alternatives(words.per)})\\s+)(?:${alternatives(names)})(?!\\p{L})`;
    if (new RegExp(pattern, 'iu').test(rest)) return { per: per as NonNullable<TypedQuantity['per']> };
  }
  return null;
}
