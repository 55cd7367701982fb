import { formatNumber } from '../format/format-number.ts';
import { formatP } from '../format/format-p.ts';
import type { Method } from './method.ts';

export const rankTests: Method = {
  id: 'rank-tests',
  name: 'Scores and counts: Kruskal–Wallis and Friedman',
  use: 'For what was scored or counted, where a mean of marks has no clear meaning: the units are ranked, over the whole trial (Kruskal–Wallis) or within blocks (Friedman), and medians are given. Where factors were allotted to units of different size, and in a Latin square, there is no plain test on ranks.',
  formula: ['χ² from the sums of ranks of each treatment, corrected for ties'],
  references: [
    'W. H. Kruskal and W. A. Wallis (1952), Use of ranks in one-criterion variance analysis, Journal of the American Statistical Association 47, 583–621.',
    'M. Friedman (1937), The use of ranks to avoid the assumption of normality implicit in the analysis of variance, Journal of the American Statistical Association 32, 675–701.',
  ],
  example({ findings }) {
    const found = findings.inference
      .flatMap(({ rank_test: ranks }) => ranks ?? [])
      .find((ranks) => ranks.statistic !== null);
    if (!found || found.statistic === null || found.p === null) return null;
    return {
      of: found.method,
      steps: [{ name: 'χ²', formula: `${formatNumber(found.statistic, 2)}, ${formatP(found.p)}` }],
    };
  },
};
