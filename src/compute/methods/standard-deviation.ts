import { summaryExample } from './examples.ts';
import type { Method } from './method.ts';

export const standardDeviation: Method = {
  id: 'standard-deviation',
  name: 'Standard deviation',
  use: 'How far single values lie from their mean, in the unit of the values.',
  formula: ['standard deviation = √( sum of (value − mean)² ÷ (n − 1) )'],
  remarks: [
    'Computed in two passes, the mean first, so that large weights with small differences lose no digits.',
  ],
  references: [
    'T. F. Chan, G. H. Golub and R. J. LeVeque (1983), Algorithms for computing the sample variance: analysis and recommendations, The American Statistician 37, 242–247.',
  ],
  example: (of) => summaryExample(of, 'Standard deviation', ['per_plant_harvested', 'per_pot']),
};
