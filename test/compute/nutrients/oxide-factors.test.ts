import { expect, test } from 'vitest';
import { otherNames } from '../../../src/compute/nutrients/oxide-factors.ts';

test('the factors of the label oxides are those of the trade', () => {
  // N. Mattson (2018), e-GRO Edible Alert 3(5), prints 0.4364 and 0.8301; today's atomic weights give 0.83015 for
  // K2O, which rounds up, so a whole last digit is allowed.
  expect(Math.abs(otherNames['P2O5']!.factor - 0.4364)).toBeLessThanOrEqual(0.00005);
  expect(Math.abs(otherNames['K2O']!.factor - 0.8301)).toBeLessThanOrEqual(0.0001);
});

test('the factors of the other oxides and ions follow from atomic weights by hand', () => {
  expect(otherNames['CaO']!.factor).toBeCloseTo(40.078 / 56.077, 12);
  expect(otherNames['MgO']!.factor).toBeCloseTo(24.305 / 40.304, 12);
  expect(otherNames['SO3']!.factor).toBeCloseTo(32.06 / 80.057, 12);
  expect(otherNames['SO4']).toEqual({ nutrient: 'S', factor: expect.closeTo(32.06 / 96.056, 12) as number });
  expect(otherNames['NO3']).toEqual({
    nutrient: 'NO3_N',
    factor: expect.closeTo(14.007 / 62.004, 12) as number,
  });
  expect(otherNames['NH4']).toEqual({
    nutrient: 'NH4_N',
    factor: expect.closeTo(14.007 / 18.039, 12) as number,
  });
});
