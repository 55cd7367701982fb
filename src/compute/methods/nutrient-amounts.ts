import { formatNumber } from '../format/format-number.ts';
import type { Method } from './method.ts';

export const nutrientAmounts: Method = {
  id: 'nutrient-amounts',
  name: 'What the recipe amounts to',
  use: 'Elements and ions in a litre of the solution, from the labels, the weights and the source water. Labels give phosphorus, potassium, calcium and magnesium as oxides or as elements; oxides are turned into elements by their atomic weights. What no label gives is unknown, never 0.',
  formula: [
    'mg/L = source water + sum over the salts of 10 × grams per litre × percent by weight',
    'mmol/L = mg/L ÷ molar mass',
    'meq/L = mmol/L × charge, summed over cations and over anions; they should be equal, and more than 10 % of half their sum between them is warned of',
    'weigh for a tank = grams per litre × litres',
    'in a litre of stock, 1 in N: N × grams per litre of solution; 1 plus N: (N + 1) × grams per litre of solution',
  ],
  references: [
    'T. Prohaska and others (2022), Standard atomic weights of the elements 2021 (IUPAC Technical Report), Pure and Applied Chemistry 94, 573–600.',
    'A. A. Steiner (1961), A universal method for preparing nutrient solutions of a certain desired composition, Plant and Soil 15, 134–154.',
  ],
  example({ trial, findings }) {
    const found = findings.nutrients?.mg_per_L['Ca'];
    const { salts = [], water = {} } = trial.metadata.nutrients ?? {};
    const holding = salts.filter(({ percent }) => percent?.['Ca'] !== undefined);
    if (found === undefined || found === null || holding.length === 0) return null;
    const parts = holding.map((salt) => `10 × ${salt.grams_per_litre} × ${salt.percent?.['Ca'] ?? 0}`);
    return {
      of: 'calcium',
      steps: [
        {
          name: 'Ca',
          formula: `${[water['Ca'] ?? 0, ...parts].join(' + ')} = ${formatNumber(found, 1)} mg/L`,
        },
      ],
    };
  },
};
