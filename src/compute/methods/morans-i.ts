import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import type { Method } from './method.ts';

export const moransI: Method = {
  id: 'morans-i',
  name: 'Moran’s I',
  use: 'Whether neighbours are alike in what is left after treatments: heavy beside heavy, light beside light. Neighbours share a side. On small grids a permutation p stands beside the normal one.',
  formula: [
    'I = (n ÷ number of neighbouring pairs, each way) × sum over neighbours of residual × residual ÷ sum of squared residuals',
  ],
  remarks: [
    'Residuals of a fitted model lean against one another, so the expectation is not −1 ÷ (n − 1); Cliff and Ord’s moments are used.',
  ],
  references: [
    'P. A. P. Moran (1950), Notes on continuous stochastic phenomena, Biometrika 37, 17–23.',
    'A. D. Cliff and J. K. Ord (1981), Spatial Processes: Models and Applications, Pion.',
  ],
  example({ findings }) {
    const found = findings.position.find(
      ({ morans_i: moran }) => moran.i !== null && moran.expected !== null,
    );
    if (!found || found.morans_i.i === null || found.morans_i.expected === null) return null;
    const formula = `${formatNumber(found.morans_i.i, 3)}, expected ${formatNumber(found.morans_i.expected, 3)}`;
    return {
      of: say('container {container}', { container: found.container }),
      steps: [{ name: 'I', formula }],
    };
  },
};
