import { expect, test } from 'vitest';
import type { Nutrient } from '../../../src/model/nutrient-keys.ts';
import type { Salt } from '../../../src/compute/nutrients/recipe.ts';
import { saltAnalysis } from '../../../src/compute/nutrients/salt-analysis.ts';

function percentOf(salt: Omit<Salt, 'grams_per_litre'>, ...nutrients: Nutrient[]): (number | null)[] {
  const { percent } = saltAnalysis({ ...salt, grams_per_litre: 1 });
  return nutrients.map((nutrient) => percent[nutrient].value);
}

test('nitrogen without its forms leaves nitrate and ammonium unknown, not zero', () => {
  const salt = { name: 'Calcium nitrate', percent: { N: 15.5, Ca: 19 } };
  expect(percentOf(salt, 'N', 'NO3_N', 'NH4_N', 'urea_N', 'Ca')).toEqual([15.5, null, null, 0, 19]);
});

test('a split label settles the forms, and its rest is urea', () => {
  expect(
    percentOf({ name: 'x', percent: { N: 15.5, NO3_N: 14.4, NH4_N: 1.1 } }, 'NO3_N', 'NH4_N', 'urea_N'),
  ).toEqual([14.4, 1.1, 0]);
  const [rest] = percentOf({ name: 'x', percent: { N: 20, NO3_N: 6, NH4_N: 4 } }, 'urea_N');
  expect(rest).toBeCloseTo(10, 12);
  expect(percentOf({ name: 'x', percent: { N: 20, NO3_N: 6 } }, 'NO3_N', 'NH4_N', 'urea_N')).toEqual([
    6,
    null,
    null,
  ]);
  expect(percentOf({ name: 'x', percent: { NO3_N: 13 } }, 'N', 'NH4_N')).toEqual([13, 0]);
});

test('forms that add up to more than the nitrogen are remarked on', () => {
  const { remarks } = saltAnalysis({ name: 'x', grams_per_litre: 1, percent: { N: 10, NO3_N: 8, NH4_N: 4 } });
  expect(remarks.map(({ text }) => text)).toEqual([
    'x: nitrate, ammonium and urea add up to more than the nitrogen.',
  ]);
});

test('a formula tells everything, and what it does not hold is none', () => {
  const salt = { name: 'whatever', formula: 'KNO3' };
  const [nitrate, ammonium, potassium, sulfur, iron] = percentOf(salt, 'NO3_N', 'NH4_N', 'K', 'S', 'Fe');
  expect(nitrate).toBeCloseTo((100 * 14.007) / 101.102, 10);
  expect(potassium).toBeCloseTo((100 * 39.098) / 101.102, 10);
  expect([ammonium, sulfur, iron]).toEqual([0, 0, 0]);
});

test('a formula that only sums its atoms leaves the form of its nitrogen unknown', () => {
  expect(percentOf({ name: 'x', formula: 'N2H4O3' }, 'NO3_N', 'NH4_N')).toEqual([null, null]);
  const salt = { name: 'x', formula: 'CaN2O6', percent: { N: 17 } };
  expect(percentOf(salt, 'N', 'NO3_N', 'NH4_N')).toEqual([17, null, null]);
  expect(percentOf({ name: 'x', formula: 'C10H12FeN2NaO8' }, 'NO3_N', 'NH4_N', 'urea_N')).toEqual([0, 0, 0]);
});

test("beside a formula the label's nitrogen is split as the formula splits it", () => {
  const salt = { name: 'x', formula: '5Ca(NO3)2.NH4NO3.10H2O', percent: { N: 15.6, Ca: 18.5 } };
  const [nitrate, ammonium] = percentOf(salt, 'NO3_N', 'NH4_N');
  expect(nitrate).toBeCloseTo((15.6 * 11) / 12, 10);
  expect(ammonium).toBeCloseTo(15.6 / 12, 10);
});

test('a label that disagrees with the formula is used, and remarked on', () => {
  const salt = { name: 'Epsom salt', grams_per_litre: 1, formula: 'MgSO4', percent: { Mg: 9.8 } };
  const { percent, remarks } = saltAnalysis(salt);
  expect(percent.Mg.value).toBe(9.8);
  expect(remarks.map(({ text }) => text)).toEqual([
    'Epsom salt: the label gives 9.8 % Mg, the formula 20.2 %; the label is used. Is it another hydrate?',
  ]);
});

test('what the name says and the label does not is unknown', () => {
  const salt = { name: 'Magnesium sulfate (Epsom salt)', percent: { Mg: 9.7 } };
  expect(percentOf(salt, 'Mg', 'S')).toEqual([9.7, null]);
  expect(saltAnalysis({ ...salt, grams_per_litre: 1 }).percent.S.reason).toBe(
    'Magnesium sulfate (Epsom salt): the label does not give S',
  );
});

test('a single salt of the trade holds nothing that is not in its name', () => {
  const salt = { name: 'Calcium nitrate 15.5-0-0, greenhouse grade', percent: { N: 15.5, Ca: 19 } };
  expect(percentOf(salt, 'P', 'K', 'Mg', 'S', 'Fe', 'B')).toEqual([0, 0, 0, 0, 0, 0]);
});

test("a blend's label may leave micronutrients unsaid, so they are unknown, but not its grade", () => {
  const salt = { name: 'Base 5-11-26', percent: { N: 5, P2O5: 11, K2O: 26, Mg: 3.1, S: 4 } };
  expect(percentOf(salt, 'Ca', 'S', 'Fe', 'Mn', 'Mo', 'Cl')).toEqual([0, 4, null, null, null, 0]);
  expect(percentOf({ name: 'Trace mix', percent: { Fe: 7, Mn: 2 } }, 'N', 'P', 'K', 'Zn')).toEqual([
    0,
    0,
    0,
    null,
  ]);
});

test('a label with the grade alone leaves calcium, magnesium and sulfur unknown', () => {
  const salt = { name: 'Grow powder', percent: { N: 10, P2O5: 5, K2O: 20 } };
  expect(percentOf(salt, 'Ca', 'Mg', 'S')).toEqual([null, null, null]);
});

test('a salt with neither label nor formula is unknown', () => {
  expect(percentOf({ name: 'Grow powder' }, 'N', 'K', 'Cl')).toEqual([null, null, null]);
  expect(percentOf({ name: 'Potassium nitrate' }, 'N', 'K', 'S')).toEqual([null, null, 0]);
});

test('a name that is not known is reported with the nearest, and nothing is taken for zero beside it', () => {
  const salt = { name: 'Base', grams_per_litre: 1, percent: { N: 5, P205: 11, K2O: 26 } };
  const { percent, remarks } = saltAnalysis(salt);
  expect(remarks.map(({ text }) => text)).toEqual([
    'Base: the label names "P205", which is not known and is left out; did you mean "P2O5"?',
  ]);
  expect(percent.P.value).toBeNull();
});

test('an element given twice counts once, and a disagreement is remarked on', () => {
  const { percent, remarks } = saltAnalysis({ name: 'x', grams_per_litre: 1, percent: { P: 10, P2O5: 10 } });
  expect(percent.P.value).toBe(10);
  expect(remarks.map(({ text }) => text)).toEqual([
    'x: the label gives P twice, and P2O5 does not agree; P is used.',
  ]);
});

test('a formula that cannot be read is not used, and a label beyond 100 % is remarked on', () => {
  const bad = saltAnalysis({ name: 'x', grams_per_litre: 1, formula: 'mgso4' });
  expect(bad.percent.Mg.value).toBeNull();
  expect(bad.remarks.map(({ text }) => text)).toEqual([
    'x: the formula "mgso4" has "mgso4" where an element such as K or Mg should stand, and is not used.',
  ]);
  const full = saltAnalysis({ name: 'x', grams_per_litre: 1, percent: { K: 60, Cl: 50 } });
  expect(full.remarks.map(({ text }) => text)).toEqual([
    "x: the label adds up to 110 % of the salt's weight.",
  ]);
});
