import { summaryExample } from './examples.ts';
import type { Method } from './method.ts';

export const coefficientOfVariation: Method = {
  id: 'coefficient-of-variation',
  name: 'Coefficient of variation (CV)',
  use: 'The standard deviation in percent of the mean, so that the evenness of light and heavy cultivars can be set side by side.',
  formula: ['CV = 100 × standard deviation ÷ mean'],
  references: [
    'G. W. Snedecor and W. G. Cochran (1989), Statistical Methods, 8th edition, Iowa State University Press, chapter 3.',
  ],
  example: (of) => summaryExample(of, 'CV', ['per_plant_harvested', 'per_pot']),
};
