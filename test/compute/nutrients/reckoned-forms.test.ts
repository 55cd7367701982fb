import { expect, test } from 'vitest';
import { amountsOf } from '../../../src/compute/nutrients/amounts.ts';
import { reckonedForms } from '../../../src/compute/nutrients/reckoned-forms.ts';

test('the ammonium of a calcium nitrate follows from the balance of its charges', () => {
  const salt = { name: 'Calcium nitrate', percent: { N: 15.5, Ca: 19 }, grams_per_litre: 1 };
  const { total } = reckonedForms(amountsOf({ salts: [salt] }))!;
  // By hand: (15.5 / 14.007 - 2 x 19 / 40.078) / 2 x 14.007 = 1.1096 % of the salt.
  expect(total.NH4_N.value! / 10).toBeCloseTo(1.1096, 4);
  expect(total.NO3_N.value! + total.NH4_N.value!).toBeCloseTo(155, 10);
});

test('for a salt written by formula and by the split of its nitrogen there is nothing to reckon', () => {
  expect(
    reckonedForms(amountsOf({ salts: [{ name: 'x', formula: 'KNO3', grams_per_litre: 1 }] })),
  ).toBeNull();
});

test('where sulfur or some form of nitrogen is unknown too, nothing is reckoned', () => {
  const grade = { name: 'Grow', percent: { N: 10, P2O5: 5, K2O: 20 }, grams_per_litre: 1 };
  expect(reckonedForms(amountsOf({ salts: [grade] }))).toBeNull();
  const part = { name: 'Grow', percent: { N: 10, NO3_N: 5, K2O: 20, S: 1 }, grams_per_litre: 1 };
  expect(reckonedForms(amountsOf({ salts: [part] }))).toBeNull();
});

test('ammonium stays between none and all of the nitrogen', () => {
  const cations = { name: 'x', percent: { N: 1, K2O: 40, S: 0 }, grams_per_litre: 1 };
  expect(reckonedForms(amountsOf({ salts: [cations] }))!.total.NH4_N.value).toBe(0);
  const anions = { name: 'x', percent: { N: 1, S: 20 }, grams_per_litre: 1 };
  expect(reckonedForms(amountsOf({ salts: [anions] }))!.total.NO3_N.value).toBe(0);
});
