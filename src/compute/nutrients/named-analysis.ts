import { say } from '../../model/say.ts';
import { distance } from 'fastest-levenshtein';
import { type Nutrient, nutrientNames } from '../../model/nutrient-keys.ts';
import type { Warning } from './recipe.ts';
import { otherNames } from './oxide-factors.ts';

/** A warning about an analysis that does not know its place in the recipe. */
export type Remark = Omit<Warning, 'salt'>;

/** An analysis by nutrient: each in the unit it was given in, oxides and ions turned into the element. */
export interface NamedAnalysis {
  given: ReadonlyMap<Nutrient, number>;
  /** Names that are not known, so that what they give is left out. */
  notKnown: readonly string[];
  /** What to tell the grower about names and doubles. */
  remarks: readonly Remark[];
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
  const notKnown: string[] = [];
  const remarks: Remark[] = [];
  for (const [key, value] of Object.entries(analysis)) {
    if (!keys.includes(key)) {
      notKnown.push(key);
      const named = { of, name: key.slice(0, 60) };
      const text = `${say('{of} names "{name}", which is not known and is left out;', named)} ${suggestion(key, keys)}`;
      remarks.push({ kind: 'name', text });
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
      const text = say('{of} gives {nutrient} twice, and {key} does not agree; {nutrient} is used.', {
        of,
        nutrient: other.nutrient,
        key,
      });
      remarks.push({ kind: 'label', text });
    }
  }
  return { given, notKnown, remarks };
}

/** `did you mean "x"?` with the known name most like a given one, or all known names where none is alike. */
function suggestion(key: string, keys: readonly string[]): string {
  const nearest = nearestKey(key, keys);
  return nearest === null
    ? say('known are {names}.', { names: keys.join(', ') })
    : say('did you mean "{name}"?', { name: nearest });
}

/** What nutrients are called, and the names that are meant, the likeliest first. */
const called: readonly (readonly [RegExp, readonly string[]])[] = [
  [/^nitrogen$/, ['N']],
  [/^nitrate/, ['NO3', 'NO3_N']],
  [/^ammoni/, ['NH4', 'NH4_N']],
  [/^urea/, ['urea_N']],
  [/^phosphorus$/, ['P']],
  [/^phosphate$/, ['P2O5']],
  [/^potassium$/, ['K']],
  [/^potash$/, ['K2O']],
  [/^calcium$/, ['Ca']],
  [/^magnesium$/, ['Mg']],
  [/^sul(f|ph)ur$/, ['S']],
  [/^sul(f|ph)ate$/, ['SO4']],
  [/^iron$/, ['Fe']],
  [/^manganese$/, ['Mn']],
  [/^zinc$/, ['Zn']],
  [/^copper$/, ['Cu']],
  [/^boron$/, ['B']],
  [/^molybdenum$/, ['Mo']],
  [/^chlor(ide|ine)$/, ['Cl']],
  [/^sodium$/, ['Na']],
  [/^silicon$/, ['Si']],
  [/^(bicarbonate|alkalinity)$/, ['HCO3']],
];

/**
 * The known name that a given one means: what it is called in words (calcium is Ca), or else the name most like it,
 * capitals and hyphens aside; null where half of it or more differs.
 */
export function nearestKey(key: string, keys: readonly string[]): string | null {
  const plain = (name: string): string => name.toLowerCase().replaceAll(/[^a-z0-9]/g, '');
  const wanted = plain(key).slice(0, 60);
  const meant = called.find(([word]) => word.test(wanted))?.[1].find((name) => keys.includes(name));
  if (meant !== undefined) return meant;
  const ranked = keys.map((name) => ({ name, steps: distance(wanted, plain(name)) }));
  const best = ranked.reduce((nearest, next) => (next.steps < nearest.steps ? next : nearest));
  return best.steps < wanted.length / 2 ? best.name : null;
}
