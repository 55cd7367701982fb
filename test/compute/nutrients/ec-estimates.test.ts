import { expect, test } from 'vitest';
import { ecRange, ionicConductivity } from '../../../src/compute/nutrients/ec-estimates.ts';
import { solutionOf } from '../../../src/compute/nutrients/solution.ts';

// Standard Methods for the Examination of Water and Wastewater, table 2510:I, conductivity of potassium chloride at
// 25.0 C in umho/cm. The formula is an approximation for mixed waters; 2 % is asked of it here.
const potassiumChloride = [
  [0.001, 146.9],
  [0.005, 717.5],
  [0.01, 1412],
  [0.02, 2765],
] as const;

test.each(potassiumChloride)(
  'potassium chloride of %d mol/L has its standard conductivity',
  (moles, standard) => {
    const { balance } = solutionOf({
      salts: [{ name: 'KCl', formula: 'KCl', grams_per_litre: 74.548 * moles }],
    });
    const value = ionicConductivity(balance)! * 1000;
    expect(Math.abs(value / standard - 1)).toBeLessThan(0.02);
  },
);

test('an ion that is not known leaves the conductivity null', () => {
  const { balance } = solutionOf({
    salts: [{ name: 'Calcium nitrate', percent: { N: 15.5, Ca: 19 }, grams_per_litre: 1 }],
  });
  expect(ionicConductivity(balance)).toBeNull();
});

test('the range leaves out what is null', () => {
  expect(
    ecRange([
      { formula: 'a', value: 2 },
      { formula: 'b', value: null },
      { formula: 'c', value: 1.5 },
    ]),
  ).toEqual({ lowest: 1.5, highest: 2 });
  expect(ecRange([{ formula: 'b', value: null }])).toBeNull();
});
