import type { TrialMetadata } from '../model/trial.ts';

type Nutrients = NonNullable<TrialMetadata['nutrients']>;

/** Charge and atomic weight (IUPAC 2021, abridged) of the cations that labels tell. */
const cations = { K: [1, 39.098], Ca: [2, 40.078], Mg: [2, 24.305], Na: [1, 22.99] } as const;

/** The share of the element in the oxide that labels may give instead, from the same atomic weights. */
const inOxide = {
  K2O: ['K', 0.83015],
  CaO: ['Ca', 0.71469],
  MgO: ['Mg', 0.60304],
  Na2O: ['Na', 0.74186],
} as const;

/** mmol of charge per litre of one element given in mg/L. */
function charge(element: string, milligrams: number): number {
  const known = Object.hasOwn(cations, element) ? cations[element as keyof typeof cations] : undefined;
  return known === undefined ? 0 : (milligrams * known[0]) / known[1];
}

/**
 * The electrical conductivity in mS/cm at 25 C that a recipe should give: a tenth of its cations in mmol of charge
 * per litre (Sonneveld and Voogt, Plant Nutrition of Greenhouse Crops, 2009, chapter 3; from memory). Null where a
 * salt gives no analysis.
 */
export function expectedEc({ water = {}, salts }: Nutrients): number | null {
  if (salts === undefined) return null;
  let sum = Object.entries(water).reduce((total, [element, value]) => total + charge(element, value), 0);
  for (const { percent, grams_per_litre: grams } of salts) {
    if (percent === undefined) return null;
    for (const [name, value] of Object.entries(percent)) {
      const oxide = Object.hasOwn(inOxide, name) ? inOxide[name as keyof typeof inOxide] : undefined;
      sum += charge(oxide?.[0] ?? name, grams * value * 10 * (oxide?.[1] ?? 1));
    }
  }
  return sum > 0 ? sum / 10 : null;
}
