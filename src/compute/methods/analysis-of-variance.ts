import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatP } from '../format/format-p.ts';
import { termName } from '../tables/inference/names-of.ts';
import { formatDf } from '../tables/inference/anova-table.ts';
import { testedAnalysis } from './examples.ts';
import type { Method } from './method.ts';

export const analysisOfVariance: Method = {
  id: 'analysis-of-variance',
  name: 'Analysis of variance with error strata',
  use: 'Whether treatments differ by more than their units do. Each term is held against the error of its own unit’s stratum: a factor allotted to containers against containers, one allotted to plots against plots. Used where units and plants are balanced. Where that error has no degrees of freedom nothing is tested.',
  formula: [
    'mean square = sum of squares ÷ degrees of freedom',
    'F = mean square of the term ÷ mean square of its stratum’s error',
    'p = chance of an F as large or larger, on the degrees of freedom of term and error',
  ],
  remarks: ['Blocks are fixed: what differs between them is taken out before treatments are compared.'],
  references: [
    'J. A. Nelder (1965), The analysis of randomized experiments with orthogonal block structure, I and II, Proceedings of the Royal Society of London A 283, 147–162 and 163–178.',
    'W. G. Cochran and G. M. Cox (1957), Experimental Designs, 2nd edition, Wiley.',
  ],
  example(of) {
    const analysis = testedAnalysis(of);
    const factors = new Set((of.trial.metadata.factors ?? []).map(({ id }) => id));
    const row = analysis?.anova.find(
      ({ term, f, p }) => f !== null && p !== null && term.split(':').every((id) => factors.has(id)),
    );
    if (!analysis || !row || row.f === null || row.p === null || row.mean_square === null) return null;
    const error = row.mean_square / row.f;
    return {
      of: termName(of.trial, row.term),
      steps: [
        {
          name: 'F',
          formula: `${formatNumber(row.mean_square, 2)} ÷ ${formatNumber(error, 2)} = ${formatNumber(row.f, 2)}`,
        },
        {
          name: 'p',
          formula: say('{value} on {df} and {errorDf} degrees of freedom', {
            value: formatP(row.p, analysis.alpha),
            df: formatDf(row.df ?? 0),
            errorDf: formatDf(row.error_df ?? 0),
          }),
        },
      ],
    };
  },
};
