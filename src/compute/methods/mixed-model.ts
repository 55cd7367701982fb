import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import type { Method } from './method.ts';

export const mixedModel: Method = {
  id: 'mixed-model',
  name: 'Mixed model by restricted likelihood (REML)',
  use: 'Used in place of the analysis of variance where plants or units were lost, or were never equal. Containers, plots and positions above the residual are random; treatments and blocks are fixed. Sums of squares of fixed factors are Type III with sum-to-zero contrasts.',
  formula: [
    'the variances are those under which the contrasts of the weights that hold no fixed effect are most likely',
    'degrees of freedom after Satterthwaite: 2 × variance² ÷ variance of that variance',
  ],
  remarks: [
    'A variance estimated at zero is reported, and never lends degrees of freedom to a test.',
    'F on several degrees of freedom after Fai and Cornelius.',
  ],
  references: [
    'H. D. Patterson and R. Thompson (1971), Recovery of inter-block information when block sizes are unequal, Biometrika 58, 545–554.',
    'F. E. Satterthwaite (1946), An approximate distribution of estimates of variance components, Biometrics Bulletin 2, 110–114.',
    'A. H.-T. Fai and P. L. Cornelius (1996), Approximate F-tests of multiple degree of freedom hypotheses in generalized least squares analyses of unbalanced split-plot experiments, Journal of Statistical Computation and Simulation 54, 363–378.',
  ],
  example({ findings }) {
    const analysis = findings.inference.find(
      ({ method, verdict }) => method === 'mixed model' && verdict === 'tested',
    );
    if (!analysis) return null;
    const steps = analysis.variance_components.flatMap(({ term, variance }) =>
      variance === null
        ? []
        : [{ name: say('Variance, {term}', { term: say(term) }), formula: formatNumber(variance, 2) }],
    );
    return steps.length === 0 ? null : { of: analysis.model, steps };
  },
};
