import { say } from '../../model/say.ts';
import { sum } from '../../statistics/sum.ts';
import type { Balance } from './balance.ts';
import { ionIds, ions } from './ions.ts';

export interface EcEstimate {
  /** The formula and its source. */
  formula: string;
  /** mS/cm at 25 C; null where an ion it needs is not known. */
  value: number | null;
}

/**
 * Electrical conductivity at 25 C, in mS/cm, by several published formulas; C is the sum of cations in meq/L.
 * Real solutions differ from each by some tenths, so they are read as a range.
 *
 * - C / 10: U.S. Salinity Laboratory Staff (1954), Diagnosis and Improvement of Saline and Alkali Soils,
 *   USDA Handbook 60: 10 meq/L to each mS/cm, for 0.1 to 5 mS/cm.
 * - 0.095 C + 0.19: C. Sonneveld, W. Voogt and L. Spaans (1999), A universal algorithm for calculation of nutrient
 *   solutions, Acta Horticulturae 481, 331-339.
 * - (C + 1.462) / 9.819: D. Savvas and K. Adamidis (1999), Automated management of nutrient solutions based on target
 *   electrical conductivity, pH, and nutrient concentration ratios, Journal of Plant Nutrition 22, 1415-1432.
 * - every ion's limiting conductivity, lessened by its neighbours: see `ionicConductivity`.
 *
 * The coefficients of the second and third are from memory of those papers. Both straight lines were fitted to
 * working solutions, and give a conductivity to water without salts; they are null below 1 meq/L.
 */
export function ecEstimates(balance: Balance): EcEstimate[] {
  const cations = balance.cations.value;
  const line = (reckon: (sum: number) => number): number | null =>
    cations === null || cations < 1 ? null : reckon(cations);
  return [
    {
      formula: say('cations in meq/L / 10 (U.S. Salinity Laboratory Staff 1954)'),
      value: cations === null ? null : cations / 10,
    },
    {
      formula: say('0.095 x cations in meq/L + 0.19 (Sonneveld, Voogt and Spaans 1999)'),
      value: line((sum) => 0.095 * sum + 0.19),
    },
    {
      formula: say('(cations in meq/L + 1.462) / 9.819 (Savvas and Adamidis 1999)'),
      value: line((sum) => (sum + 1.462) / 9.819),
    },
    {
      formula: say('conductivities of the ions, corrected for ionic strength (after Appelo 2010)'),
      value: ionicConductivity(balance),
    },
  ];
}

/**
 * Conductivity from the ions, mS/cm at 25 C: the sum of limiting molar conductivity x mmol/L x g^a / 1000,
 * where log10 g = -0.5 z^2 sqrt(I), a = 0.6 / sqrt(|z|) and I is the ionic strength in mol/L. Holds while
 * I < 0.36 |z|, which no nutrient solution passes. Null where cations or anions are not known.
 *
 * Reference: C.A.J. Appelo (2010), Specific conductance: how to calculate, to use, and the pitfalls; the
 * exponent from memory. Checked in the tests against potassium chloride's standard conductivities.
 */
export function ionicConductivity({ meq, cations, anions }: Balance): number | null {
  if (cations.value === null || anions.value === null) return null;
  const millimoles = ionIds.map((ion) => meq[ion].atLeast / Math.abs(ions[ion].charge));
  const strength = sum(ionIds.map((ion, at) => millimoles[at]! * ions[ion].charge ** 2)) / 2000;
  return sum(
    ionIds.map((ion, at) => {
      const charges = Math.abs(ions[ion].charge);
      const lessened = 10 ** (-0.5 * 0.6 * charges ** 1.5 * Math.sqrt(strength));
      return ((ions[ion].conductivity ?? 0) * millimoles[at]! * lessened) / 1000;
    }),
  );
}

/** mS/cm at 25 C. */
export interface EcRange {
  lowest: number;
  highest: number;
}

/** The lowest and highest of the estimates, or null where there is none. */
export function ecRange(estimates: readonly EcEstimate[]): EcRange | null {
  const values = estimates.flatMap(({ value }) => (value === null ? [] : [value]));
  if (values.length === 0) return null;
  return { lowest: Math.min(...values), highest: Math.max(...values) };
}
