import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatP } from '../format/format-p.ts';
import { testedAnalysis } from './examples.ts';
import type { Method } from './method.ts';

export const randomisationTest: Method = {
  id: 'randomisation-test',
  name: 'Randomisation test',
  use: 'How often the drawing of lots alone would have set the treatments as far apart, had they all been alike. Every arrangement that the design allowed is counted where there are at most 200,000; otherwise 20,000 are drawn with a published seed.',
  formula: [
    'counted: p = arrangements with as large a statistic or larger ÷ all arrangements',
    'drawn: p = (1 + draws as large or larger) ÷ (1 + draws)',
  ],
  references: [
    'R. A. Fisher (1935), The Design of Experiments, Oliver and Boyd.',
    'B. Phipson and G. K. Smyth (2010), Permutation p-values should never be zero, Statistical Applications in Genetics and Molecular Biology 9, article 39.',
  ],
  example(of) {
    const found = testedAnalysis(of)?.randomisation_test;
    if (!found || found.p === null) return null;
    const values = { p: formatP(found.p), count: formatNumber(found.arrangements, 0) };
    return {
      of: found.statistic,
      steps: [
        {
          name: 'p',
          formula: found.exact
            ? say('{p} of {count} arrangements, every one counted', values)
            : say('{p} of {count} arrangements, drawn with seed {seed}', {
                ...values,
                seed: found.seed ?? '',
              }),
        },
      ],
    };
  },
};
