import { sum } from '../../statistics/sum.ts';
import { atomicWeight } from './atomic-weights.ts';

/**
 * The molar mass of a formula's atoms in g/mol.
 *
 * @example molarMass({ H: 2, O: 1 }) // 18.015
 */
export function molarMass(atoms: Readonly<Record<string, number>>): number {
  return sum(Object.entries(atoms).map(([symbol, count]) => atomicWeight(symbol) * count));
}
