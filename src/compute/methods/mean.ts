import { summaryExample } from './examples.ts';
import type { Method } from './method.ts';

export const mean: Method = {
  id: 'mean',
  name: 'Mean',
  use: 'The average weight of the plants, pots or containers of a treatment. Per plant harvested leaves out what died; per plant set counts it as 0: the two answer different questions, and both are shown where they differ.',
  formula: ['mean = sum of the values ÷ n'],
  remarks: [
    'A value that is unknown is left out and counted as unknown beside the mean; it is never taken as 0.',
  ],
  references: [
    'G. W. Snedecor and W. G. Cochran (1989), Statistical Methods, 8th edition, Iowa State University Press, chapter 3.',
  ],
  example: (of) => summaryExample(of, 'Mean', ['per_plant_harvested', 'per_pot']),
};
