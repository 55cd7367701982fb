import type { Nutrient } from '../../model/nutrient-keys.ts';
import type { Balance } from './balance.ts';
import type { Amount } from './recipe.ts';

export interface Ratios {
  /** Nitrogen to potassium by weight, as N for each 1 K; null where either is unknown or there is no K. */
  nitrogenToPotassium: number | null;
  /** K, Ca and Mg in percent of their sum in meq, Steiner's way; null where one is unknown or all are 0. */
  cationPercent: { K: number; Ca: number; Mg: number } | null;
  /** NO3, H2PO4 and SO4 in percent of their sum in meq; null where one is unknown or all are 0. */
  anionPercent: { NO3: number; H2PO4: number; SO4: number } | null;
}

/**
 * The ratios by which recipes are compared.
 *
 * Reference for the ratios in meq: A.A. Steiner (1961), A universal method for preparing nutrient solutions of
 * a certain desired composition, Plant and Soil 15, 134-154.
 */
export function ratiosOf(total: Readonly<Record<Nutrient, Amount>>, { meq }: Balance): Ratios {
  const nitrogen = total.N.value;
  const potassium = total.K.value;
  const cations = percentages([meq.K.value, meq.Ca.value, meq.Mg.value]);
  const anions = percentages([meq.NO3.value, meq.H2PO4.value, meq.SO4.value]);
  return {
    nitrogenToPotassium: nitrogen === null || !potassium ? null : nitrogen / potassium,
    cationPercent: cations && { K: cations[0], Ca: cations[1], Mg: cations[2] },
    anionPercent: anions && { NO3: anions[0], H2PO4: anions[1], SO4: anions[2] },
  };
}

type Three<Value> = readonly [Value, Value, Value];

function percentages([a, b, c]: Three<number | null>): Three<number> | null {
  if (a === null || b === null || c === null) return null;
  const sum = a + b + c;
  return sum > 0 ? [(100 * a) / sum, (100 * b) / sum, (100 * c) / sum] : null;
}
