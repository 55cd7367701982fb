import fc from 'fast-check';
import { expect, test } from 'vitest';
import { knownSalts } from '../../../src/compute/nutrients/known-salts.ts';
import type { Recipe } from '../../../src/compute/nutrients/recipe.ts';
import { nutrientsOf, solutionOf } from '../../../src/compute/nutrients/solution.ts';

const recipe: Recipe = {
  water: { Ca: 20, Mg: 6 },
  salts: [
    {
      name: 'Base 5-11-26',
      grams_per_litre: 1,
      percent: { N: 5, P2O5: 11, K2O: 26, Mg: 3.1, S: 4 },
      stock: 'B',
    },
    { name: 'Calcium nitrate', grams_per_litre: 0.66, percent: { N: 15.5, Ca: 19 }, stock: 'A' },
  ],
  stock_ratio: 100,
};

test('salts and water add up by hand', () => {
  const { mg_per_L } = nutrientsOf(recipe);
  expect(mg_per_L['N']).toBeCloseTo(50 + 102.3, 10);
  expect(mg_per_L['Ca']).toBeCloseTo(125.4 + 20, 10);
  expect(mg_per_L['Mg']).toBeCloseTo(31 + 6, 10);
  expect(mg_per_L['S']).toBeCloseTo(40, 10);
  expect(mg_per_L['P']).toBeCloseTo((110 * 61.948) / 141.943, 10);
  expect(mg_per_L['K']).toBeCloseTo((260 * 78.196) / 94.195, 10);
});

test('what no label tells is null beside a reason, and EC says how it was reckoned', () => {
  const { mg_per_L, cations_meq, anions_meq, reason, ec_estimates } = nutrientsOf(recipe);
  expect([mg_per_L['NO3_N'], mg_per_L['NH4_N'], mg_per_L['Fe'], cations_meq, anions_meq]).toEqual(
    Array.from({ length: 5 }, () => null),
  );
  expect(reason).toContain('Calcium nitrate: nothing says how much of the nitrogen is nitrate');
  expect(reason).toContain('Base 5-11-26: the label does not give Fe, Mn, Zn, Cu, B, Mo.');
  expect(ec_estimates[0]!.formula).toContain('ammonium reckoned from the balance of charges');
  // K 5.520, Ca 7.256, Mg 3.045 and 0.523 of ammonium from the calcium nitrate, meq/L; see reckoned-forms.
  expect(ec_estimates[0]!.value).toBeCloseTo(1.634, 3);
  expect(ec_estimates[3]!.value).toBeNull();
});

test('chloride and sodium are listed only where something gives them', () => {
  expect(Object.keys(nutrientsOf(recipe).mg_per_L)).not.toContain('Na');
  const { mg_per_L } = nutrientsOf({ ...recipe, water: { Ca: 20, Na: 12, Cl: 18 } });
  expect([mg_per_L['Na'], mg_per_L['Cl']]).toEqual([12, 18]);
});

test('a salt of which none is used leaves nothing unknown', () => {
  const { mg_per_L } = nutrientsOf({
    salts: [
      { name: 'KNO3', formula: 'KNO3', grams_per_litre: 1 },
      { name: 'Mystery', grams_per_litre: 0 },
    ],
  });
  expect(Object.values(mg_per_L)).not.toContain(null);
});

test("a source water that names only one side of its ions leaves the other side's sum unknown", () => {
  const salts: Recipe['salts'] = [{ name: 'KNO3', formula: 'KNO3', grams_per_litre: 1.01102 }];
  const short = solutionOf({ water: { Ca: 40 }, salts }).balance;
  expect(short.cations.value).toBeCloseTo(10 + 80 / 40.078, 10);
  expect(short.anions.value).toBeNull();
  expect(short.anions.atLeast).toBeCloseTo(10, 10);
  expect(short.anions.reason).toContain('does not give enough anions');
  const whole = solutionOf({ water: { Ca: 40.078, HCO3: 122.032 }, salts }).balance;
  expect(whole.anions.value).toBeCloseTo(12, 10);
});

test('nitrogen of a source water without its form is of unknown form', () => {
  const { amounts } = solutionOf({ water: { N: 5 } });
  expect([amounts.total.N.value, amounts.total.NO3_N.value]).toEqual([5, null]);
  expect(solutionOf({ water: { NO3: 62.004 } }).amounts.total.N.value).toBeCloseTo(14.007, 10);
});

test('an acid neutralises bicarbonate, and its ions are counted once', () => {
  const { balance } = solutionOf({
    water: { Ca: 40.078, HCO3: 122.032 },
    salts: [{ name: 'Nitric acid', formula: 'HNO3', grams_per_litre: 0.063012 }],
  });
  expect(balance.meq.HCO3.value).toBeCloseTo(1, 10);
  expect(balance.meq.H.value).toBe(0);
  expect(balance.cations.value).toBeCloseTo(2, 10);
  expect(balance.anions.value).toBeCloseTo(2, 10);
});

test('an acid by its label leaves the cations unknown', () => {
  const { balance } = solutionOf({
    salts: [{ name: 'Phosphoric acid', percent: { P2O5: 61 }, grams_per_litre: 0.1 }],
  });
  expect(balance.cations.value).toBeNull();
  expect(balance.cations.reason).toBe('Phosphoric acid: without its formula, the acid in it is unknown');
});

const formulas = knownSalts.flatMap((salt) => salt.formulas);
const anySalts = fc.array(
  fc.record({ formula: fc.constantFrom(...formulas), grams: fc.double({ min: 0, max: 5, noNaN: true }) }),
  { minLength: 1, maxLength: 8 },
);

test('whatever pure salts are mixed, the charges balance to rounding', () => {
  fc.assert(
    fc.property(anySalts, (salts) => {
      const [first, ...rest] = salts.map(({ formula, grams }) => ({
        name: 'x',
        formula,
        grams_per_litre: grams,
      }));
      const { cations, anions } = solutionOf({ salts: [first!, ...rest] }).balance;
      return Math.abs(cations.value! - anions.value!) <= 1e-12 * Math.max(1, cations.value!);
    }),
    { seed: 1961 },
  );
});

test('doubling every salt and the water doubles every amount', () => {
  const double: Recipe = {
    ...recipe,
    water: { Ca: 40, Mg: 12 },
    salts: [
      { ...recipe.salts![0], grams_per_litre: 2 },
      { ...recipe.salts![1]!, grams_per_litre: 1.32 },
    ],
  };
  const once = nutrientsOf(recipe).mg_per_L;
  for (const [name, value] of Object.entries(nutrientsOf(double).mg_per_L)) {
    if (value === null) expect(once[name]).toBeNull();
    else expect(value).toBeCloseTo(2 * once[name]!, 10);
  }
});

test('a recipe of water alone, or of nothing, is reckoned too', () => {
  expect(nutrientsOf({}).mg_per_L['N']).toBe(0);
  expect(nutrientsOf({}).cations_meq).toBe(0);
  expect(nutrientsOf({}).ec_estimates[1]!.value).toBeNull();
});
