import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atomicWeight, atomicWeights } from '../../../src/compute/nutrients/atomic-weights.ts';
import { molarMass } from '../../../src/compute/nutrients/molar-mass.ts';
import { type Formula, parseFormula } from '../../../src/compute/nutrients/parse-formula.ts';

function formula(text: string): Formula {
  const read = parseFormula(text);
  if ('problem' in read) throw new Error(`${text} ${read.problem}`);
  return read.formula;
}

test('a hydrate counts its water', () => {
  expect(formula('MgSO4.7H2O').atoms).toEqual({ Mg: 1, S: 1, O: 11, H: 14 });
});

test('the dot may be a full stop, a middle dot, a bullet, an asterisk or a space, and figures may be subscripts', () => {
  const plain = formula('Ca(NO3)2.4H2O');
  for (const text of [
    'Ca(NO3)2·4H2O',
    'Ca(NO3)2 • 4H2O',
    'Ca(NO3)2*4H2O',
    'Ca(NO3)2 4H2O',
    'Ca(NO₃)₂·4H₂O',
    ' Ca(NO3)2 . 4 H2O ',
  ]) {
    expect(formula(text), text).toEqual(plain);
  }
  expect(plain.atoms).toEqual({ Ca: 1, N: 2, O: 10, H: 8 });
});

test('a part may be taken several times, also by halves', () => {
  expect(formula('5Ca(NO3)2.NH4NO3.10H2O').atoms).toEqual({ Ca: 5, N: 12, O: 43, H: 24 });
  expect(formula('CaSO4.0.5H2O').atoms).toEqual({ Ca: 1, S: 1, O: 4.5, H: 1 });
  expect(formula('Na2B4O7.10H2O').atoms).toEqual({ Na: 2, B: 4, O: 17, H: 20 });
});

test('brackets nest', () => {
  expect(formula('K4[Fe(CN)6].3H2O').atoms).toEqual({ K: 4, Fe: 1, C: 6, N: 6, H: 6, O: 3 });
});

test('the forms of nitrogen and carbon are read off the groups', () => {
  expect(formula('NH4NO3')).toMatchObject({ nitrate: 1, ammonium: 1, amide: 0 });
  expect(formula('(NH4)2SO4')).toMatchObject({ nitrate: 0, ammonium: 2 });
  expect(formula('NH4H2PO4')).toMatchObject({ nitrate: 0, ammonium: 1 });
  expect(formula('CO(NH2)2')).toMatchObject({ amide: 2, carbonate: 0 });
  expect(formula('KHCO3')).toMatchObject({ carbonate: 1 });
  expect(formula('N2H4O3')).toMatchObject({ nitrate: 0, ammonium: 0 });
});

test('what is no formula is a problem that says what stands where', () => {
  const problem = (text: string): string => {
    const read = parseFormula(text);
    return 'problem' in read ? read.problem : 'none';
  };
  expect(problem('')).toBe('is empty');
  expect(problem('Xx2O')).toBe('names "Xx", which is no element known here');
  expect(problem('mgso4')).toBe('has "mgso4" where an element such as K or Mg should stand');
  expect(problem('Ca(NO3')).toBe('has a bracket that is not closed');
  expect(problem('CaNO3)2')).toBe('has a ")" that nothing opened');
  expect(problem('Ca(NO3]2')).toBe('has a "]" that nothing opened');
  expect(problem('K0SO4')).toBe('has the number 0 after K');
  expect(problem('MgSO4.xH2O')).toBe('has "xH2O" where an element such as K or Mg should stand');
  expect(problem('MgSO4··H2O')).toBe('has nothing between two dots');
  expect(problem('9999999K')).toBe('takes a part 9999999 times');
  expect(problem('K'.repeat(101))).toBe('is longer than 100 characters');
});

test('any text is either a formula with atoms to count or a problem', () => {
  const piece = fc.constantFrom(
    'K',
    'NO3',
    'SO4',
    '(',
    ')',
    '[',
    ']',
    '.',
    '·',
    '2',
    '0.5',
    'H2O',
    'x',
    ' ',
    '-',
    '𝛼',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(piece).map((pieces) => pieces.join('')),
      ),
      (text) => {
        const read = parseFormula(text);
        if ('problem' in read) return read.problem.length > 0;
        const mass = molarMass(read.formula.atoms);
        return Number.isFinite(mass) && mass > 0;
      },
    ),
    { seed: 4711, numRuns: 2000 },
  );
});

test('molar masses agree with those printed on bottles', () => {
  // CRC Handbook of Chemistry and Physics, molecular weights, from memory; to the second decimal.
  for (const [text, printed] of [
    ['KNO3', 101.1],
    ['KH2PO4', 136.09],
    ['Ca(NO3)2.4H2O', 236.15],
    ['MgSO4.7H2O', 246.47],
    ['K2SO4', 174.26],
    ['(NH4)2SO4', 132.14],
    ['H3BO3', 61.83],
  ] as const) {
    expect(Math.abs(molarMass(formula(text).atoms) - printed), text).toBeLessThan(0.011);
  }
});

test('an element outside the table is refused by name', () => {
  expect(() => atomicWeight('Uuq')).toThrow('"Uuq"');
  expect(Object.values(atomicWeights).every((weight) => weight > 1 && weight < 127)).toBe(true);
});
