import { expect, test } from 'vitest';
import { formulaIons } from '../../../src/compute/nutrients/formula-ions.ts';
import { ionIds, ions } from '../../../src/compute/nutrients/ions.ts';
import { knownSalts } from '../../../src/compute/nutrients/known-salts.ts';
import { parseFormula } from '../../../src/compute/nutrients/parse-formula.ts';

/** The ions of a formula, without those it does not give. */
function ionsOf(text: string): Record<string, number> {
  const read = parseFormula(text);
  if ('problem' in read) throw new Error(`${text} ${read.problem}`);
  return Object.fromEntries(Object.entries(formulaIons(read.formula)).filter(([, moles]) => moles !== 0));
}

test('salts come apart into the ions of the textbook', () => {
  expect(ionsOf('Ca(NO3)2.4H2O')).toEqual({ Ca: 1, NO3: 2 });
  expect(ionsOf('5Ca(NO3)2.NH4NO3.10H2O')).toEqual({ Ca: 5, NH4: 1, NO3: 11 });
  expect(ionsOf('KH2PO4')).toEqual({ K: 1, H2PO4: 1 });
  expect(ionsOf('FeSO4.7H2O')).toEqual({ Fe2: 1, SO4: 1 });
  expect(ionsOf('Fe2(SO4)3')).toEqual({ Fe3: 2, SO4: 3 });
  expect(ionsOf('FeCl3.6H2O')).toEqual({ Fe3: 1, Cl: 3 });
  expect(ionsOf('(NH4)6Mo7O24.4H2O')).toEqual({ NH4: 6, MoO4: 7, H: 8 });
});

test('acids give hydrogen ions and alkalis hydroxide', () => {
  expect(ionsOf('HNO3')).toEqual({ NO3: 1, H: 1 });
  expect(ionsOf('H3PO4')).toEqual({ H2PO4: 1, H: 1 });
  expect(ionsOf('KOH')).toEqual({ K: 1, OH: 1 });
  expect(ionsOf('K2HPO4')).toEqual({ K: 2, H2PO4: 1, OH: 1 });
  expect(ionsOf('KHCO3')).toEqual({ K: 1, HCO3: 1 });
});

test('boric acid and urea carry no charge, and a chelate holds on to its metal', () => {
  expect(ionsOf('H3BO3')).toEqual({});
  expect(ionsOf('CO(NH2)2')).toEqual({});
  expect(ionsOf('C10H12FeN2NaO8')).toEqual({ Na: 1, organic: 1 });
});

test('every salt of the table comes apart without a charge left over', () => {
  for (const text of knownSalts.flatMap(({ formulas }) => formulas)) {
    const moles = ionsOf(text);
    const charge = ionIds.reduce((total, ion) => total + (moles[ion] ?? 0) * ions[ion].charge, 0);
    expect(charge, text).toBe(0);
  }
});
