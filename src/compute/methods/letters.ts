import { treatmentName } from '../format/level-names.ts';
import { testedAnalysis } from './examples.ts';
import type { Method } from './method.ts';

export const letters: Method = {
  id: 'letters',
  name: 'Letters',
  use: 'A short way to write which pairs were told apart: two means share a letter exactly where their adjusted p is 0.05 or more. A shared letter does not say that two cultivars are equal, only that this trial did not tell them apart.',
  formula: [
    'start with one letter for all; for each pair told apart split every letter that both hold; drop what another letter covers',
  ],
  references: [
    'H.-P. Piepho (2004), An algorithm for a letter-based representation of all-pairwise comparisons, Journal of Computational and Graphical Statistics 13, 456–466.',
  ],
  example(of) {
    const means = testedAnalysis(of)?.means.filter((each) => each.letters !== null) ?? [];
    if (means.length === 0) return null;
    return {
      of: 'the means',
      steps: means.map(({ treatment, letters: own }) => ({
        name: treatmentName(of.trial, treatment, of.names),
        formula: own ?? '',
      })),
    };
  },
};
