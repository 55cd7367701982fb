import { say } from '../../model/say.ts';
import type { Method } from './method.ts';

export const otherScale: Method = {
  id: 'other-scale',
  name: 'Analysis on another scale',
  use: 'Where the spread grows with the mean, the analysis is done again on the logarithm or the square root of the weights. Means are brought back to the plain scale, and the page says whether the conclusion changes.',
  formula: ['back-transformed mean = exp(mean of logarithms), or (mean of square roots)²'],
  references: ['M. S. Bartlett (1947), The use of transformations, Biometrics 3, 39–52.'],
  example({ findings }) {
    const found = findings.inference.find(({ transformed }) => transformed)?.transformed;
    if (!found) return null;
    return {
      of: say(found.scale),
      steps: [{ name: 'Conclusion', formula: say(found.conclusion_changes ? 'changes' : 'does not change') }],
    };
  },
};
