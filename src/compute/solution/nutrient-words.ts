import { say } from '../../model/say.ts';
import type { Nutrient } from '../../model/nutrient-keys.ts';
import { type IonId, ions } from '../nutrients/ions.ts';

/** Nutrients as a grower reads them. */
const names: Readonly<Record<Nutrient, string>> = {
  N: 'Nitrogen, N, in all',
  NO3_N: 'of it as nitrate',
  NH4_N: 'of it as ammonium',
  urea_N: 'of it as urea',
  P: 'Phosphorus, P',
  K: 'Potassium, K',
  Ca: 'Calcium, Ca',
  Mg: 'Magnesium, Mg',
  S: 'Sulfur, S',
  Fe: 'Iron, Fe',
  Mn: 'Manganese, Mn',
  Zn: 'Zinc, Zn',
  Cu: 'Copper, Cu',
  B: 'Boron, B',
  Mo: 'Molybdenum, Mo',
  Cl: 'Chlorine, Cl',
  Na: 'Sodium, Na',
  Si: 'Silicon, Si',
  Co: 'Cobalt, Co',
  Ni: 'Nickel, Ni',
  HCO3: 'Bicarbonate, HCO₃',
};

const subscripts = '₀₁₂₃₄₅₆₇₈₉';

/** A nutrient in words with its symbol. */
export function nutrientInWords(nutrient: Nutrient): string {
  return say(names[nutrient]);
}

/** An ion with its figures lowered and its charge raised: SO₄²⁻. */
export function ionInWords(ion: IonId): string {
  const { name, charge } = ions[ion];
  const figure = Math.abs(charge) === 1 ? '' : String(Math.abs(charge));
  const formula = name.replace(new RegExp(`\\s?${figure}[+-]$`), '');
  const lowered = formula.replaceAll(/(?<=[A-Za-z])\d/g, (digit) => subscripts[Number(digit)]!);
  const raised = figure.replace('2', '²').replace('3', '³') + (charge > 0 ? '⁺' : '⁻');
  return ion === 'organic' ? name : lowered + raised;
}
