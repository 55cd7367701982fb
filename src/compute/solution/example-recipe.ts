import type { Recipe } from '../nutrients/recipe.ts';

/**
 * A published solution to start from: D.R. Hoagland and D.I. Arnon (1950), The water-culture method for growing plants
 * without soil, California Agricultural Experiment Station Circular 347 (revised), solution No. 1, its molar solutions
 * turned into grams. Its trace elements are left out.
 */
export const exampleRecipe = {
  title: 'Hoagland and Arnon (1950), solution No. 1, without its trace elements',
  recipe: {
    salts: [
      { name: 'Calcium nitrate', formula: 'Ca(NO3)2.4H2O', grams_per_litre: 1.181, stock: 'A' },
      { name: 'Potassium nitrate', formula: 'KNO3', grams_per_litre: 0.5055, stock: 'B' },
      { name: 'Monopotassium phosphate', formula: 'KH2PO4', grams_per_litre: 0.1361, stock: 'B' },
      { name: 'Magnesium sulfate', formula: 'MgSO4.7H2O', grams_per_litre: 0.4929, stock: 'B' },
    ],
    stock_ratio: 100,
  } satisfies Recipe,
  litres: 50,
};
