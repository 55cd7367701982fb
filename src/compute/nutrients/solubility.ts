import { knownSalt, type KnownSalt, knownSalts } from './known-salts.ts';
import { molarMass } from './molar-mass.ts';
import { type Formula, parseFormula } from './parse-formula.ts';

/**
 * Grams of a salt that dissolve in a litre of water at 20 C, from the table of known salts, by its formula or
 * else its name; null where it is not in the table. Another hydrate than the table's is converted by the weights
 * of the two, as if only the salt without its water counted.
 */
export function solubilityOf(name: string, formula: Formula | null): number | null {
  if (!formula) return knownSalt(name)?.solubility ?? null;
  const mass = molarMass(formula.atoms);
  for (const salt of knownSalts) {
    const listed = salt.formulas.map(massOf);
    const same = listed.some(
      (other) => Math.abs(other.mass - mass) < 0.01 && sameAtoms(other.formula, formula),
    );
    if (same) return converted(salt, listed[0]!.mass, mass);
  }
  return null;
}

function converted(salt: KnownSalt, listedMass: number, mass: number): number | null {
  return salt.solubility === null ? null : (salt.solubility * mass) / listedMass;
}

function massOf(text: string): { formula: Formula; mass: number } {
  const read = parseFormula(text);
  if ('problem' in read) throw new Error(`the table of known salts has "${text}", which ${read.problem}`);
  return { formula: read.formula, mass: molarMass(read.formula.atoms) };
}

function sameAtoms(a: Formula, b: Formula): boolean {
  const symbols = new Set([...Object.keys(a.atoms), ...Object.keys(b.atoms)]);
  return [...symbols].every((symbol) => a.atoms[symbol] === b.atoms[symbol]);
}
