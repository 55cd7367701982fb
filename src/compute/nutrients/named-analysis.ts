import { distance } from 'fastest-levenshtein';
import { type Nutrient, nutrientNames } from '../../model/nutrient-keys.ts';
import { otherNames } from './oxide-factors.ts';

/** An analysis by nutrient: each in the unit it was given in, oxides and ions turned into the element. */
export interface NamedAnalysis {
  given: ReadonlyMap<Nutrient, number>;
  /** What to tell the grower about names and doubles. */
  remarks: readonly string[];
}

/**
 * Reads an analysis by its names (percent by weight, or mg/L), turning oxides and ions into the element's own
 * weight. Where a nutrient stands under two names (P and P2O5) its own name counts, and more than 2 % between
 * them is remarked on. A name that is not known is left out and remarked on, with the nearest known one.
 *
 * @param of what the analysis is of, to begin a remark
 */
export function namedAnalysis(
  analysis: Readonly<Record<string, number>>,
  keys: readonly string[],
  of: string,
): NamedAnalysis {
  const given = new Map<Nutrient, number>();
  const remarks: string[] = [];
  for (const [key, value] of Object.entries(analysis)) {
    if (!keys.includes(key)) {
      remarks.push(
        `${of} names "${key}", which is not known and is left out; did you mean "${nearestKey(key, keys)}"?`,
      );
      continue;
    }
    const nutrient = nutrientNames.find((name) => name === key);
    if (nutrient !== undefined) given.set(nutrient, value);
  }
  for (const [key, value] of Object.entries(analysis)) {
    const other = otherNames[key];
    if (other === undefined || !keys.includes(key)) continue;
    const converted = value * other.factor;
    const own = given.get(other.nutrient);
    if (own === undefined) given.set(other.nutrient, converted);
    else if (Math.abs(own - converted) > 0.02 * Math.max(own, converted)) {
      remarks.push(
        `${of} gives ${other.nutrient} twice, and ${key} does not agree; ${other.nutrient} is used.`,
      );
    }
  }
  return { given, remarks };
}

/** The known name most like a given one, capitals and hyphens aside. */
export function nearestKey(key: string, keys: readonly string[]): string {
  const plain = (name: string): string => name.toLowerCase().replaceAll(/[^a-z0-9]/g, '');
  const ranked = keys.map((name) => ({ name, steps: distance(plain(key), plain(name)) }));
  return ranked.reduce((best, next) => (next.steps < best.steps ? next : best)).name;
}
