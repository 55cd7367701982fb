import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  blankSalt,
  type CalculatorState,
  fromAddress,
  mostSalts,
  stateOf,
  toAddress,
} from '../../../src/components/solution/calculator-state.ts';
import { type InputFault, type Inputs, readInputs } from '../../../src/components/solution/read-inputs.ts';
import type { Recipe } from '../../../src/compute/nutrients/recipe.ts';

const recipe: Recipe = {
  water: { Ca: 20, Mg: 6 },
  salts: [
    { name: 'Base', grams_per_litre: 1, percent: { N: 5, P2O5: 11, K2O: 26 }, stock: 'B' },
    { name: 'Epsom salt', grams_per_litre: 0.4, formula: 'MgSO4.7H2O' },
  ],
  stock_ratio: 100,
};
const state = stateOf(recipe, { trial: 'autumn', title: 'Autumn', litres: 50 });

function read(changes: Partial<CalculatorState>): Inputs {
  const inputs = readInputs({ ...state, ...changes });
  if ('recipe' in inputs) return inputs;
  throw new Error(JSON.stringify(inputs));
}

function faults(changes: Partial<CalculatorState>): readonly InputFault[] {
  const inputs = readInputs({ ...state, ...changes });
  return 'recipe' in inputs ? [] : inputs;
}

test('a recipe set into the fields is read again as it was', () => {
  expect(read({})).toEqual({ recipe, litres: 50, stockLitres: 1, measuredEc: null });
});

test('an address holds every field', () => {
  const full = { ...state, ec: '1.7', bottle: '2', unit: 'gal', per: 'oz/100gal' };
  expect(fromAddress(`?${toAddress(full)}`)).toEqual(full);
});

test('any text in the fields survives the address, up to its length', () => {
  const text = fc.string({ maxLength: 60, unit: 'grapheme' });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(text, text, text, text, text), { minLength: 1, maxLength: 5 }),
      text,
      (rows, water) => {
        const salts = rows.map(([name, amount, label, formula, stock]) => ({
          name,
          amount,
          label,
          formula,
          stock,
        }));
        const typed = { ...state, salts, water };
        expect(fromAddress(toAddress(typed))).toEqual(typed);
      },
    ),
    { seed: 1950 },
  );
});

test('an address without salts, or beyond all measure, is not believed', () => {
  expect(fromAddress('?trial=autumn')).toBeNull();
  expect(fromAddress('')).toBeNull();
  const many = fromAddress(`?${'name=x&amount=1&'.repeat(500)}`)!;
  expect(many.salts).toHaveLength(mostSalts);
  expect(fromAddress(`?name=${'x'.repeat(5000)}&per=tons&unit=sea`)).toMatchObject({
    per: 'g/L',
    unit: 'L',
    salts: [{ name: 'x'.repeat(200), amount: '' }],
  });
});

test('ounces to 100 US gallons and volumes in US gallons are turned into metric by the exact units', () => {
  const { recipe: found, litres, stockLitres } = read({ per: 'oz/100gal', volume: '10', unit: 'gal' });
  expect(found.salts![0].grams_per_litre).toBeCloseTo(28.349523125 / 378.5411784, 12);
  expect(litres).toBeCloseTo(37.85411784, 10);
  expect(stockLitres).toBeCloseTo(3.785411784, 10);
});

test('a row that is left blank is passed over, and no salt at all is a fault', () => {
  expect(read({ salts: [...state.salts, blankSalt] }).recipe.salts).toHaveLength(2);
  expect(faults({ salts: [blankSalt] })).toEqual([
    { field: 'name', salt: 0, message: 'No salt is written here: write the name of one' },
  ]);
});

test('a salt by its formula alone is named so', () => {
  const salts = [{ ...blankSalt, amount: '1', formula: 'KNO3' }];
  expect(read({ salts }).recipe.salts).toEqual([{ name: 'KNO3', grams_per_litre: 1, formula: 'KNO3' }]);
});

test('every field that is not understood is named with its salt', () => {
  const [base] = state.salts;
  const found = faults({
    salts: [
      base!,
      { name: '', amount: '1,5', label: 'Q 4', formula: '', stock: '' },
      { ...blankSalt, name: 'x' },
    ],
    water: 'Ca 20,5',
    volume: '0',
    ratio: '0.5',
    ec: 'high',
  });
  expect(found.map(({ field, salt }) => [field, salt])).toEqual([
    ['label', 1],
    ['amount', 1],
    ['name', 1],
    ['amount', 2],
    ['water', null],
    ['volume', null],
    ['ratio', null],
    ['ec', null],
  ]);
});

test('a formula that cannot be read is refused with what it has', () => {
  expect(faults({ salts: [{ ...blankSalt, amount: '1', formula: 'mgso4' }] })[0]).toMatchObject({
    field: 'formula',
    salt: 0,
    message: '"mgso4" has "mgso4" where an element such as K or Mg should stand: write such as MgSO4.7H2O',
  });
});

test('without a ratio no stock is made, and a measured EC is passed on', () => {
  const inputs = read({ ratio: '', ec: '1.7', bottle: '' });
  expect(inputs.recipe.stock_ratio).toBeUndefined();
  expect(inputs).toMatchObject({ measuredEc: 1.7, stockLitres: 1 });
});
