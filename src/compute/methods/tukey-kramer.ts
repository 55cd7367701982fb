import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatP } from '../format/format-p.ts';
import { treatmentName } from '../format/level-names.ts';
import { testedAnalysis } from './examples.ts';
import type { Method } from './method.ts';

export const tukeyKramer: Method = {
  id: 'tukey-kramer',
  name: 'Every pair: Tukey–Kramer',
  use: 'Differences between all pairs of a family, with limits and p that hold for all of them at once: the more pairs are looked at, the wider they are.',
  formula: [
    'q = √2 × |difference| ÷ its standard error',
    'adjusted p = chance that the studentized range of so many means is q or more',
    '95% limits = difference ± q(0.95) ÷ √2 × standard error',
  ],
  references: [
    'J. W. Tukey (1949), Comparing individual means in the analysis of variance, Biometrics 5, 99–114.',
    'C. Y. Kramer (1956), Extension of multiple range tests to group means with unequal numbers of replications, Biometrics 12, 307–310.',
    'A. J. Hayter (1984), A proof of the conjecture that the Tukey–Kramer multiple comparisons procedure is conservative, The Annals of Statistics 12, 61–75.',
  ],
  example(of) {
    const analysis = testedAnalysis(of);
    const pair = analysis?.differences.find(
      ({ estimate, se, p_adjusted: p }) => estimate !== null && se !== null && p !== null,
    );
    if (!analysis || !pair || pair.estimate === null || pair.se === null || pair.p_adjusted === null)
      return null;
    const name = (treatment: Record<string, string>) => treatmentName(of.trial, treatment, of.names);
    const q = (Math.SQRT2 * Math.abs(pair.estimate)) / pair.se;
    return {
      of: say('{a} less {b}', { a: name(pair.a), b: name(pair.b) }),
      steps: [
        {
          name: 'q',
          formula: `√2 × ${formatNumber(Math.abs(pair.estimate), 2)} ÷ ${formatNumber(pair.se, 2)} = ${formatNumber(q, 3)}`,
        },
        { name: 'Adjusted', formula: formatP(pair.p_adjusted, analysis.alpha) },
      ],
    };
  },
};
