import fc from 'fast-check';
import { expect, test } from 'vitest';
import { blankSalt, type CalculatorState } from '../../../src/components/solution/calculator-state.ts';
import { changeUnits } from '../../../src/components/solution/change-units.ts';

const state: CalculatorState = {
  trial: '',
  title: '',
  salts: [
    { ...blankSalt, amount: '1' },
    { ...blankSalt, amount: 'a pinch' },
  ],
  per: 'g/L',
  water: 'Ca 20',
  volume: '50',
  unit: 'L',
  ratio: '100',
  bottle: '1',
  ec: '',
};
const us = { per: 'oz/100gal', unit: 'gal' };
const metric = { per: 'g/L', unit: 'L' };

test('grams to the litre become ounces to 100 US gallons, litres US gallons, and nothing else changes', () => {
  // 378.5411784 L x 1 g/L / 28.349523125 = 13.35265 oz; 50 / 3.785411784 = 13.20860 US gallons
  const changed = changeUnits(state, us);
  expect(changed.salts.map(({ amount }) => amount)).toEqual(['13.3526', 'a pinch']);
  expect(changed).toMatchObject({
    ...us,
    volume: '13.2086',
    bottle: '0.264172',
    ratio: '100',
    water: 'Ca 20',
  });
});

test('what is turned and turned back is as it was typed', () => {
  const typed = fc.tuple(fc.integer({ min: 1, max: 99_999 }), fc.integer({ min: 0, max: 4 }));
  fc.assert(
    fc.property(typed, ([figures, decimals]) => {
      const volume = String(figures / 10 ** decimals);
      const back = changeUnits(changeUnits({ ...state, volume }, us), metric);
      return Number(back.volume) === Number(volume);
    }),
    { seed: 1959 },
  );
});

test('the same units change nothing', () => {
  expect(changeUnits(state, metric)).toEqual(state);
});
