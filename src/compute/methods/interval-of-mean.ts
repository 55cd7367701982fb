import { summaryExample } from './examples.ts';
import type { Method } from './method.ts';

export const intervalOfMean: Method = {
  id: 'interval-of-mean',
  name: 'Standard error and interval of a mean',
  use: 'How well a mean is known. Given only where the values are the replicates of the treatment: several plants in one tank tell about that tank, not about what another tank would do.',
  formula: [
    'standard error = standard deviation ÷ √n',
    '95% interval = mean ± t(0.975, n − 1) × standard error',
  ],
  references: ['Student (1908), The probable error of a mean, Biometrika 6, 1–25.'],
  example(of) {
    const measures = ['per_plant_harvested', 'per_pot', 'per_container'] as const;
    const error = summaryExample(of, 'Standard error', measures);
    const interval = summaryExample(of, '95% interval', measures);
    return error && { of: error.of, steps: [...error.steps, ...(interval?.steps ?? [])] };
  },
};
