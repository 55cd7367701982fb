import { expect, test } from 'vitest';
import type { Recipe, Salt } from '../../../src/compute/nutrients/recipe.ts';
import { solutionOf } from '../../../src/compute/nutrients/solution.ts';

const calcium = (stock?: string): Salt => salt('Calcium nitrate', 'Ca(NO3)2.4H2O', 1, stock);
const epsom = (stock?: string): Salt => salt('Epsom salt', 'MgSO4.7H2O', 0.5, stock);

function salt(name: string, formula: string, grams: number, stock?: string): Salt {
  return { name, formula, grams_per_litre: grams, ...(stock === undefined ? {} : { stock }) };
}

function warnings(recipe: Recipe, measuredEc?: number): readonly string[] {
  return solutionOf(recipe, measuredEc === undefined ? {} : { measuredEc }).warnings.map(({ text }) => text);
}

test('calcium and sulfate in one stock are warned of, by name', () => {
  expect(warnings({ salts: [calcium('A'), epsom('A')], stock_ratio: 100 })).toEqual([
    'Calcium (Calcium nitrate) and sulfate (Epsom salt) share stock A: in a concentrate they come down as gypsum. ' +
      'Keep them in separate stocks.',
  ]);
});

test('a stock is the same one however its letter is written', () => {
  expect(warnings({ salts: [calcium('A'), epsom(' a')], stock_ratio: 100 })[0]).toContain('share stock A');
});

test('so are calcium and phosphate, and a sulfate that only the name tells', () => {
  const phosphate = salt('MKP', 'KH2PO4', 0.2, 'A');
  expect(warnings({ salts: [calcium('A'), phosphate] })[0]).toContain('calcium phosphate');
  const named: Salt = { name: 'Magnesium sulphate', grams_per_litre: 0.5, percent: { Mg: 9.7 }, stock: 'A' };
  expect(warnings({ salts: [calcium('A'), named] })[0]).toContain('sulfate (Magnesium sulphate)');
});

test('nothing is said of separate stocks, of salts put straight into the tank, or of a salt not used', () => {
  expect(warnings({ salts: [calcium('A'), epsom('B')], stock_ratio: 100 })).toEqual([]);
  expect(warnings({ salts: [calcium(), epsom()] })).toEqual([]);
  expect(
    warnings({ salts: [calcium('A'), { ...epsom('A'), grams_per_litre: 0 }], stock_ratio: 100 }),
  ).toEqual([]);
});

test('a ratio without named stocks means one stock for all', () => {
  expect(warnings({ salts: [calcium(), epsom()], stock_ratio: 100 })[0]).toContain('share the stock');
});

test('more of a salt than dissolves is warned of, and a near thing said to be one', () => {
  const potash = (grams: number): Recipe => ({
    salts: [salt('Potash', 'K2SO4', grams, 'B')],
    stock_ratio: 200,
  });
  expect(warnings(potash(0.6))).toEqual([
    'Potash will not all dissolve: 120 g in a litre of stock B, and about 111 g dissolve in a litre of water at ' +
      '20 C. Make the stock weaker.',
  ]);
  expect(warnings(potash(0.52))[0]).toContain('will hardly all dissolve: 104 g');
  expect(warnings(potash(0.4))).toEqual([]);
});

test('labels that cannot balance are warned of', () => {
  const odd: Salt = { name: 'Odd', grams_per_litre: 1, percent: { N: 10, NO3_N: 10, K: 10, Mg: 0, S: 0 } };
  expect(warnings({ salts: [odd] })[0]).toContain('more anions than cations: 2.6 against 7.1 meq/L');
});

test('a measured EC far from the estimates is warned of, a near one not', () => {
  const recipe: Recipe = { salts: [calcium(), epsom()] };
  const [lowest] = solutionOf(recipe).ec.map(({ value }) => value!);
  expect(warnings(recipe, lowest! * 0.69)[0]).toContain('lies far below');
  expect(warnings(recipe, lowest! * 0.72)).toEqual([]);
  expect(warnings(recipe, 3)[0]).toContain('lies far above');
});

test('an unknown name in the water is reported with the nearest', () => {
  expect(warnings({ water: { hardness: 20 } })[0]).toMatch(
    /^The source water's analysis names "hardness", .*known are N, /,
  );
  expect(warnings({ water: { Calcium: 20 } })[0]).toContain('did you mean "Ca"?');
  expect(warnings({ water: { nitrate: 20 } })[0]).toContain('did you mean "NO3"?');
  expect(warnings({ water: { 'NO3-N': 20 } })[0]).toContain('did you mean "NO3_N"?');
});
