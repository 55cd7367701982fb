import type { Nutrient } from '../../model/nutrient-keys.ts';
import { atomicWeight } from './atomic-weights.ts';
import { molarMass } from './molar-mass.ts';

interface OtherName {
  nutrient: Nutrient;
  /** Grams of the nutrient in one gram of what the name stands for. */
  factor: number;
}

/**
 * The names by which labels and water analyses give a nutrient other than by its own weight, with the factor to
 * its own weight: element / oxide (or ion), from atomic weights.
 *
 * @example otherNames.P2O5.factor // 0.4364, grams of P in a gram of P2O5
 */
export const otherNames: Readonly<Record<string, OtherName>> = {
  P2O5: part('P', 'P', { P: 2, O: 5 }),
  K2O: part('K', 'K', { K: 2, O: 1 }),
  CaO: part('Ca', 'Ca', { Ca: 1, O: 1 }),
  MgO: part('Mg', 'Mg', { Mg: 1, O: 1 }),
  SO3: part('S', 'S', { S: 1, O: 3 }),
  SiO2: part('Si', 'Si', { Si: 1, O: 2 }),
  NO3: part('NO3_N', 'N', { N: 1, O: 3 }),
  NH4: part('NH4_N', 'N', { N: 1, H: 4 }),
  SO4: part('S', 'S', { S: 1, O: 4 }),
};

function part(nutrient: Nutrient, symbol: string, atoms: Readonly<Record<string, number>>): OtherName {
  return { nutrient, factor: (atomicWeight(symbol) * atoms[symbol]!) / molarMass(atoms) };
}
