/**
 * Standard atomic weights abridged to five significant figures, of the elements that a fertiliser's formula can
 * name; g/mol.
 *
 * Reference: T. Prohaska and others (2022), Standard atomic weights of the elements 2021 (IUPAC Technical
 * Report), Pure and Applied Chemistry 94, 573-600, table 2. Typed from memory of that table.
 */
export const atomicWeights: Readonly<Record<string, number>> = {
  H: 1.008,
  B: 10.81,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  F: 18.998,
  Na: 22.99,
  Mg: 24.305,
  Al: 26.982,
  Si: 28.085,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Mn: 54.938,
  Fe: 55.845,
  Co: 58.933,
  Ni: 58.693,
  Cu: 63.546,
  Zn: 65.38,
  Se: 78.971,
  Br: 79.904,
  Mo: 95.95,
  I: 126.9,
};

/**
 * The atomic weight of an element in g/mol. Throws on a symbol that is not in the table, since formulas are
 * checked when they are read.
 */
export function atomicWeight(symbol: string): number {
  const weight = atomicWeights[symbol];
  if (weight === undefined) throw new Error(`atomicWeight knows no element "${symbol}"`);
  return weight;
}
