import { expect, test } from 'vitest';
import { solubilityOf } from '../../../src/compute/nutrients/solubility.ts';
import { solutionOf } from '../../../src/compute/nutrients/solution.ts';
import { stockWeights } from '../../../src/compute/nutrients/stock-weights.ts';
import { parseFormula } from '../../../src/compute/nutrients/parse-formula.ts';
import { weighingFor } from '../../../src/compute/nutrients/weighing.ts';

const { amounts } = solutionOf({
  salts: [
    { name: 'Base', grams_per_litre: 1, percent: { N: 5 }, stock: 'B' },
    { name: 'Calcium nitrate', grams_per_litre: 0.66, percent: { Ca: 19 }, stock: 'A' },
    { name: 'Into the tank', grams_per_litre: 0.1, percent: { K: 30 } },
  ],
});

test('1 in 100 and 1 plus 100 differ by one part, stocks in the order of their names', () => {
  expect(stockWeights(amounts.salts, 100)).toEqual([
    {
      name: 'A',
      salts: [{ name: 'Calcium nitrate', oneIn: 66, onePlus: expect.closeTo(66.66, 10) as number }],
    },
    { name: 'B', salts: [{ name: 'Base', oneIn: 100, onePlus: 101 }] },
  ]);
});

test('grams and ounces for a tank follow from the exact units', () => {
  const [base] = weighingFor(amounts.salts, 3.785411784);
  expect(base!.grams).toBeCloseTo(3.785411784, 12);
  expect(base!.ounces).toBeCloseTo(3.785411784 / 28.349523125, 12);
  expect(base!.ouncesPerGallon).toBe(base!.ounces);
});

test('solubility is found by formula or by name, and turned from one hydrate to another by weight', () => {
  const formula = (text: string) => {
    const read = parseFormula(text);
    if ('problem' in read) throw new Error(read.problem);
    return read.formula;
  };
  expect(solubilityOf('x', formula('K2SO4'))).toBe(111);
  expect(solubilityOf('Potassium sulphate 0-0-50', null)).toBe(111);
  expect(solubilityOf('Base 5-11-26', null)).toBeNull();
  expect(solubilityOf('x', formula('MgSO4'))).toBeCloseTo((710 * 120.361) / 246.466, 8);
  expect(solubilityOf('x', formula('NaCl'))).toBeNull();
});
