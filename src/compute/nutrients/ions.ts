import type { Nutrient } from '../../model/nutrient-keys.ts';
import { atomicWeight } from './atomic-weights.ts';
import { molarMass } from './molar-mass.ts';

export interface Ion {
  /** How it is written. */
  name: string;
  /** Charges, with their sign. */
  charge: number;
  /** The nutrient that is reckoned to be in this form, or null where only a formula can give the ion. */
  nutrient: Nutrient | null;
  /** Limiting molar conductivity at 25 C, S cm2/mol; null where the ion is too large and rare to matter. */
  conductivity: number | null;
}

/**
 * The ions of a nutrient solution at its usual pH of 5 to 6.5: phosphorus is reckoned as H2PO4-, sulfur as
 * sulfate, boron and silicon as uncharged acids, urea as uncharged. Trace metals are counted as ions only where
 * a formula shows that they are no chelate; from a label they are left out of the charges, where they make
 * less than 0.1 meq/L. The hydrogen ions of an acid and the hydroxide of an alkali are what a formula's other
 * charges leave over.
 *
 * Conductivities: P. Vanysek, Ionic conductivity and diffusion at infinite dilution, CRC Handbook of Chemistry
 * and Physics; equivalent values times the charge; from memory.
 */
export const ions = {
  K: { name: 'K+', charge: 1, nutrient: 'K', conductivity: 73.48 },
  Ca: { name: 'Ca2+', charge: 2, nutrient: 'Ca', conductivity: 118.94 },
  Mg: { name: 'Mg2+', charge: 2, nutrient: 'Mg', conductivity: 106 },
  NH4: { name: 'NH4+', charge: 1, nutrient: 'NH4_N', conductivity: 73.5 },
  Na: { name: 'Na+', charge: 1, nutrient: 'Na', conductivity: 50.08 },
  Fe2: { name: 'Fe2+', charge: 2, nutrient: null, conductivity: 108 },
  Fe3: { name: 'Fe3+', charge: 3, nutrient: null, conductivity: 204 },
  Mn: { name: 'Mn2+', charge: 2, nutrient: null, conductivity: 107 },
  Zn: { name: 'Zn2+', charge: 2, nutrient: null, conductivity: 105.6 },
  Cu: { name: 'Cu2+', charge: 2, nutrient: null, conductivity: 107.2 },
  Co: { name: 'Co2+', charge: 2, nutrient: null, conductivity: 110 },
  Ni: { name: 'Ni2+', charge: 2, nutrient: null, conductivity: 99.2 },
  H: { name: 'H+', charge: 1, nutrient: null, conductivity: 349.65 },
  NO3: { name: 'NO3-', charge: -1, nutrient: 'NO3_N', conductivity: 71.42 },
  H2PO4: { name: 'H2PO4-', charge: -1, nutrient: 'P', conductivity: 36 },
  SO4: { name: 'SO4 2-', charge: -2, nutrient: 'S', conductivity: 160 },
  Cl: { name: 'Cl-', charge: -1, nutrient: 'Cl', conductivity: 76.31 },
  HCO3: { name: 'HCO3-', charge: -1, nutrient: 'HCO3', conductivity: 44.5 },
  MoO4: { name: 'MoO4 2-', charge: -2, nutrient: null, conductivity: 149 },
  OH: { name: 'OH-', charge: -1, nutrient: null, conductivity: 198 },
  organic: { name: 'organic anions', charge: -1, nutrient: null, conductivity: null },
} as const satisfies Readonly<Record<string, Ion>>;

export type IonId = keyof typeof ions;

export const ionIds = Object.keys(ions) as readonly IonId[];

const symbolOf: Partial<Record<Nutrient, string>> = { NO3_N: 'N', NH4_N: 'N', urea_N: 'N' };

/** Milligrams of a nutrient in a millimole of it: its atomic weight, nitrogen's for the forms of nitrogen. */
export function milligramsPerMillimole(nutrient: Nutrient): number {
  if (nutrient === 'HCO3') return molarMass({ H: 1, C: 1, O: 3 });
  return atomicWeight(symbolOf[nutrient] ?? nutrient);
}

/** One number for each ion, reckoned by a function of its id. */
export function byIon<Value>(valueOf: (ion: IonId) => Value): Record<IonId, Value> {
  return Object.fromEntries(ionIds.map((ion) => [ion, valueOf(ion)])) as Record<IonId, Value>;
}
