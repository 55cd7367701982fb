import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import type { Recipe } from '../../../src/compute/nutrients/recipe.ts';
import { nutrientsOf } from '../../../src/compute/nutrients/solution.ts';

interface Schema {
  $defs?: object;
  properties: { nutrients: object };
}

const file = new URL('../../../schemas/findings.schema.json', import.meta.url);
const schema = JSON.parse(readFileSync(file, 'utf8')) as Schema;
const valid = new Ajv2020({ strict: false }).compile({ $defs: schema.$defs, ...schema.properties.nutrients });

const recipes: Recipe[] = [
  {},
  { water: { Ca: 20, N: 3 } },
  { salts: [{ name: 'Grow powder', grams_per_litre: 1 }], stock_ratio: 100 },
  { salts: [{ name: 'KNO3', formula: 'KNO3', grams_per_litre: 1 }] },
];

test.each(recipes)('what is published of a recipe keeps to the schema: %j', (recipe) => {
  const published: unknown = JSON.parse(JSON.stringify(nutrientsOf(recipe)));
  expect(valid(published), JSON.stringify(valid.errors)).toBe(true);
});

test('a number that was not finite would not keep to it', () => {
  expect(valid({ ...nutrientsOf({}), cations_meq: 'NaN' })).toBe(false);
});
