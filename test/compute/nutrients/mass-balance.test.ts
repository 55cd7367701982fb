import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atomicWeight } from '../../../src/compute/nutrients/atomic-weights.ts';
import { knownSalts } from '../../../src/compute/nutrients/known-salts.ts';
import { molarMass } from '../../../src/compute/nutrients/molar-mass.ts';
import { parseFormula } from '../../../src/compute/nutrients/parse-formula.ts';
import type { Recipe } from '../../../src/compute/nutrients/recipe.ts';
import { solutionOf } from '../../../src/compute/nutrients/solution.ts';
import { stockWeights } from '../../../src/compute/nutrients/stock-weights.ts';
import { weighingFor } from '../../../src/compute/nutrients/weighing.ts';
import { labelKeys } from '../../../src/model/nutrient-keys.ts';

const formulas = knownSalts.flatMap((salt) => salt.formulas);
const grams = fc.double({ min: 0.001, max: 5, noNaN: true });
const anySalts = fc.array(fc.record({ formula: fc.constantFrom(...formulas), grams }), {
  minLength: 1,
  maxLength: 8,
});

function recipeOf(salts: readonly { formula: string; grams: number }[]): Recipe {
  const [first, ...rest] = salts.map(({ formula, grams: weight }) => ({
    name: 'x',
    formula,
    grams_per_litre: weight,
    stock: 'A',
  }));
  return { salts: [first!, ...rest] };
}

function atomsOf(text: string): Readonly<Record<string, number>> {
  const read = parseFormula(text);
  if ('problem' in read) throw new Error(read.problem);
  return read.formula.atoms;
}

const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a));

test('whatever pure salts are mixed, every element of them is in the solution, to rounding', () => {
  const elements = ['N', 'P', 'K', 'Ca', 'Mg', 'S', 'Fe', 'Mn', 'Zn', 'Cu', 'B', 'Mo', 'Cl', 'Na'] as const;
  fc.assert(
    fc.property(anySalts, (salts) => {
      const { total } = solutionOf(recipeOf(salts)).amounts;
      return elements.every((element) => {
        const weighed = salts.map(({ formula, grams: weight }) => {
          const atoms = atomsOf(formula);
          return (1000 * weight * (atoms[element] ?? 0) * atomicWeight(element)) / molarMass(atoms);
        });
        return same(
          total[element].value!,
          weighed.reduce((sum, value) => sum + value, 0),
        );
      });
    }),
    { seed: 1950 },
  );
});

test('the forms of nitrogen add up to the nitrogen, whatever pure salts are mixed', () => {
  fc.assert(
    fc.property(anySalts, (salts) => {
      const { N, NO3_N, NH4_N, urea_N } = solutionOf(recipeOf(salts)).amounts.total;
      return same(N.value!, NO3_N.value! + NH4_N.value! + urea_N.value!);
    }),
    { seed: 1950 },
  );
});

test('a litre of stock, diluted 1 in N or 1 plus N, gives the grams to the litre that the recipe asks for', () => {
  fc.assert(
    fc.property(anySalts, fc.double({ min: 1, max: 1000, noNaN: true }), (salts, ratio) => {
      const { salts: amounts } = solutionOf(recipeOf(salts)).amounts;
      const [stock] = stockWeights(amounts, ratio);
      return stock!.salts.every(
        ({ oneIn, onePlus }, at) =>
          same(oneIn / ratio, salts[at]!.grams) && same(onePlus / (1 + ratio), salts[at]!.grams),
      );
    }),
    { seed: 1961 },
  );
});

test('what is weighed for a tank holds what its litres hold', () => {
  fc.assert(
    fc.property(anySalts, fc.double({ min: 0.1, max: 5000, noNaN: true }), (salts, litres) => {
      const { salts: amounts, total } = solutionOf(recipeOf(salts)).amounts;
      const weighed = weighingFor(amounts, litres);
      const potassium = weighed.map(
        ({ grams: weight }, at) => (weight * amounts[at]!.analysis.percent.K.value!) / 100,
      );
      return same(
        potassium.reduce((sum, value) => sum + value, 0),
        (total.K.value! * litres) / 1000,
      );
    }),
    { seed: 1961 },
  );
});

const anyLabel = fc.dictionary(fc.constantFrom(...labelKeys), fc.double({ min: 0, max: 100, noNaN: true }), {
  minKeys: 1,
  maxKeys: 6,
});

test('whatever a label says, every amount is a number of at least 0 or null with a reason', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('Base', 'Calcium nitrate', 'Magnesium sulfate', 'Phosphoric acid', 'Iron chelate'),
      anyLabel,
      (name, percent) => {
        const { amounts } = solutionOf({ salts: [{ name, grams_per_litre: 1, percent }] });
        return Object.values(amounts.total).every(({ value, atLeast, reason }) =>
          value === null ? reason !== '' && atLeast >= 0 : value >= 0 && Number.isFinite(value),
        );
      },
    ),
    { seed: 1939, numRuns: 500 },
  );
});

test('every hydrate of the table has the molar mass of its anhydrous salt and its water', () => {
  for (const [hydrate, dry, water] of [
    ['MgSO4.7H2O', 'MgSO4', 7],
    ['Ca(NO3)2.4H2O', 'Ca(NO3)2', 4],
    ['CaCl2.2H2O', 'CaCl2', 2],
  ] as const) {
    expect(molarMass(atomsOf(hydrate))).toBeCloseTo(molarMass(atomsOf(dry)) + water * 18.015, 10);
  }
});
