import { expect, test } from 'vitest';
import { solutionOf } from '../../../src/compute/nutrients/solution.ts';
import { molarMass } from '../../../src/compute/nutrients/molar-mass.ts';
import { parseFormula } from '../../../src/compute/nutrients/parse-formula.ts';
import { weighingFor } from '../../../src/compute/nutrients/weighing.ts';
import type { Recipe } from '../../../src/compute/nutrients/recipe.ts';

/** Grams in so many millimoles of a salt. */
function grams(formula: string, millimoles: number): number {
  const read = parseFormula(formula);
  if ('problem' in read) throw new Error(read.problem);
  return (molarMass(read.formula.atoms) * millimoles) / 1000;
}

/** A recipe of pure salts by millimoles to the litre. */
function pure(...salts: (readonly [formula: string, millimoles: number])[]): Recipe {
  const [first, ...rest] = salts.map(([formula, millimoles]) => ({
    name: formula,
    formula,
    grams_per_litre: grams(formula, millimoles),
  }));
  return { salts: [first!, ...rest] };
}

// D.R. Hoagland and D.I. Arnon (1950), The water-culture method for growing plants without soil, California
// Agricultural Experiment Station Circular 347 (revised), solution No. 1: to a litre, 1 mL of molar KH2PO4,
// 5 mL of KNO3, 5 mL of Ca(NO3)2, 2 mL of MgSO4.
const hoagland = pure(['KH2PO4', 1], ['KNO3', 5], ['Ca(NO3)2.4H2O', 5], ['MgSO4.7H2O', 2]);

test('Hoagland and Arnon No. 1 comes out at the mg/L printed for it', () => {
  const { total } = solutionOf(hoagland).amounts;
  const rounded = (['N', 'P', 'K', 'Ca', 'Mg', 'S'] as const).map((name) => Math.round(total[name].value!));
  expect(rounded).toEqual([210, 31, 235, 200, 49, 64]);
});

test('Hoagland and Arnon No. 1 holds 15 mmol of nitrate and balances at 20 meq/L', () => {
  const { balance, millimoles, reason, warnings } = solutionOf(hoagland);
  expect(millimoles.NO3_N).toBeCloseTo(15, 12);
  expect(millimoles.NH4_N).toBe(0);
  expect(balance.cations.value).toBeCloseTo(20, 12);
  expect(balance.anions.value).toBeCloseTo(20, 12);
  expect(balance.differencePercent).toBeCloseTo(0, 12);
  expect(reason).toBe('');
  expect(warnings).toEqual([]);
});

test('its EC estimates agree with hand arithmetic at 20 meq/L', () => {
  const [tenth, sonneveld, savvas] = solutionOf(hoagland).ec.map(({ value }) => value);
  expect(tenth).toBeCloseTo(2, 12);
  expect(sonneveld).toBeCloseTo(2.09, 12);
  expect(savvas).toBeCloseTo(21.462 / 9.819, 12);
});

// A.A. Steiner (1961), A universal method for preparing nutrient solutions of a certain desired composition, Plant
// and Soil 15, 134-154: K:Ca:Mg 35:45:20 and NO3:H2PO4:SO4 60:5:35 in percent of the equivalents. At 20 meq/L that is
// K 7, Ca 9, Mg 4, NO3 12, H2PO4 1, SO4 7, which these salts make by hand.
const steiner = pure(['Ca(NO3)2.4H2O', 4.5], ['KH2PO4', 1], ['KNO3', 3], ['K2SO4', 1.5], ['MgSO4.7H2O', 2]);

test("Steiner's solution at 20 meq/L has his mutual ratios", () => {
  const { balance, ratios } = solutionOf(steiner);
  expect(balance.cations.value).toBeCloseTo(20, 12);
  expect(balance.anions.value).toBeCloseTo(20, 12);
  const meq = (['K', 'Ca', 'Mg', 'NO3', 'H2PO4', 'SO4'] as const).map((ion) => balance.meq[ion].value!);
  for (const [at, printed] of [7, 9, 4, 12, 1, 7].entries()) expect(meq[at]).toBeCloseTo(printed, 12);
  for (const [got, printed] of [
    [ratios.cationPercent!.K, 35],
    [ratios.cationPercent!.Ca, 45],
    [ratios.cationPercent!.Mg, 20],
    [ratios.anionPercent!.NO3, 60],
    [ratios.anionPercent!.H2PO4, 5],
    [ratios.anionPercent!.SO4, 35],
  ] as const) {
    expect(got).toBeCloseTo(printed, 10);
  }
});

// N. Mattson (2018), Fertilizer calculation basics for hydroponics, e-GRO Edible Alert 3(5), worked examples:
// 645 mg/L of calcium nitrate (15.5 % N, 19 % Ca) gives 100 ppm N and 122.6 ppm Ca; 412 mg/L of magnesium sulfate
// (9.7 % Mg, 13 % S) gives 40 ppm Mg and 53.56 ppm S; 378.5 L of it take 155.9 g, which is 5.5 oz in 100 gallons.
test('an extension sheet works out calcium nitrate for 100 mg/L of nitrogen as we do', () => {
  const { total } = solutionOf({
    salts: [{ name: 'Calcium nitrate', grams_per_litre: 0.645, percent: { N: 15.5, Ca: 19 } }],
  }).amounts;
  expect(Math.round(total.N.value!)).toBe(100);
  expect(Math.abs(total.Ca.value! - 122.6)).toBeLessThanOrEqual(0.05 + 1e-9);
});

test('an extension sheet works out magnesium sulfate for 40 mg/L of magnesium as we do, and its ounces', () => {
  const { salts, total } = solutionOf({
    salts: [{ name: 'Magnesium sulfate', grams_per_litre: 0.412, percent: { Mg: 9.7, S: 13 } }],
  }).amounts;
  expect(Math.round(total.Mg.value!)).toBe(40);
  expect(total.S.value).toBeCloseTo(53.56, 10);
  const [weighing] = weighingFor(salts, 378.5);
  expect(weighing!.grams).toBeCloseTo(155.9, 1);
  expect(weighing!.ounces).toBeCloseTo(5.5, 1);
  expect(weighing!.ouncesPerGallon * 100).toBeCloseTo(5.5, 1);
});
