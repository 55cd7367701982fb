import { say } from '../../model/say.ts';
import { type Nutrient, waterKeys } from '../../model/nutrient-keys.ts';
import { sum } from '../../statistics/sum.ts';
import { byNutrient } from './by-nutrient.ts';
import { namedAnalysis } from './named-analysis.ts';
import { nitrogenForms } from './nitrogen-forms.ts';
import { type Amount, known, type Recipe, type Warning } from './recipe.ts';
import { type SaltAnalysis, saltAnalysis } from './salt-analysis.ts';

/** A salt of the recipe with what it holds and how much of it goes into a litre. */
export interface SaltInSolution {
  name: string;
  /** g/L of the finished solution. */
  gramsPerLitre: number;
  /** The stock it goes into; null where it goes straight into the tank. */
  stock: string | null;
  analysis: SaltAnalysis;
  /** Its place in the recipe, from 0. */
  place: number;
}

export interface Amounts {
  salts: readonly SaltInSolution[];
  /** mg/L of what the water brings. */
  water: Record<Nutrient, Amount>;
  /** mg/L in the finished solution, salts and water. */
  total: Record<Nutrient, Amount>;
  remarks: readonly Warning[];
}

/**
 * What salts and source water make in a litre: mg/L = 10 x percent x g/L, summed over the salts, plus the
 * water's. A salt whose share is unknown makes the sum unknown, unless none of that salt is used. What the water's
 * analysis does not name counts as none; nitrogen in it without its form is of unknown form.
 *
 * Where the recipe has a stock ratio and no salt names a stock, all go into one stock, called "the stock".
 */
export function amountsOf(recipe: Recipe): Amounts {
  const water = namedAnalysis(recipe.water ?? {}, waterKeys, say("the source water's analysis"));
  const salts = (recipe.salts ?? []).map((salt, place) => ({
    place,
    name: salt.name,
    gramsPerLitre: salt.grams_per_litre,
    stock: stockOf(salt.stock, recipe),
    analysis: saltAnalysis(salt),
  }));
  const oneStock = recipe.stock_ratio !== undefined && salts.every(({ stock }) => stock === null);
  const placed = oneStock ? salts.map((salt) => ({ ...salt, stock: '' })) : salts;
  const { remark, ...forms } = nitrogenForms(water.given, say('the source water'));
  const brought = { ...byNutrient((nutrient) => known(water.given.get(nutrient) ?? 0)), ...forms };
  return {
    salts: placed,
    water: brought,
    total: byNutrient((nutrient) => total(nutrient, placed, brought[nutrient])),
    remarks: [
      ...water.remarks.map((remark) => ({ ...remark, salt: null })),
      ...(remark ? [{ kind: 'label' as const, text: remark, salt: null }] : []),
      ...placed.flatMap(({ analysis, place }) =>
        analysis.remarks.map((remark) => ({ ...remark, salt: place })),
      ),
    ],
  };
}

/** "a" and "A" are one bottle, called as it was first written: what may not meet in it must not be missed. */
function stockOf(written: string | undefined, { salts }: Recipe): string | null {
  if (written === undefined) return null;
  const plain = (name: string): string => name.trim().toLowerCase();
  return salts?.find(({ stock }) => stock !== undefined && plain(stock) === plain(written))?.stock ?? written;
}

function total(nutrient: Nutrient, salts: readonly SaltInSolution[], water: Amount): Amount {
  const shares = salts
    .filter(({ gramsPerLitre }) => gramsPerLitre > 0)
    .map(({ gramsPerLitre, analysis }) => ({ share: analysis.percent[nutrient], gramsPerLitre }));
  const missing = [water, ...shares.map(({ share }) => share)].filter(({ value }) => value === null);
  const atLeast = sum([
    water.atLeast,
    ...shares.map(({ share, gramsPerLitre }) => 10 * share.atLeast * gramsPerLitre),
  ]);
  return {
    value: missing.length > 0 ? null : atLeast,
    atLeast,
    reason: missing.map(({ reason }) => reason).join('; '),
  };
}
