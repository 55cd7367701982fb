import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatP } from '../format/format-p.ts';
import { formatDf } from '../tables/inference/anova-table.ts';
import { testedAnalysis } from './examples.ts';
import type { Method } from './method.ts';

export const shapiroWilk: Method = {
  id: 'shapiro-wilk',
  name: 'Shapiro–Wilk',
  use: 'Whether the residuals of the units look as if drawn from a normal distribution. A small p is a warning; with few units a large one says little.',
  formula: ['W = (sum of weights × ordered residuals)² ÷ sum of squared residuals'],
  references: [
    'S. S. Shapiro and M. B. Wilk (1965), An analysis of variance test for normality (complete samples), Biometrika 52, 591–611.',
    'P. Royston (1995), Remark AS R94: a remark on algorithm AS 181, the W-test for normality, Applied Statistics 44, 547–551.',
  ],
  example(of) {
    const found = testedAnalysis(of)?.checks?.shapiro_wilk;
    if (!found || found.w === null || found.p === null) return null;
    return {
      of: 'the residuals of the units',
      steps: [{ name: 'W', formula: `${formatNumber(found.w, 4)}, ${formatP(found.p)}` }],
    };
  },
};

export const brownForsythe: Method = {
  id: 'brown-forsythe',
  name: 'Brown–Forsythe',
  use: 'Whether the units of every treatment are equally spread. A small p is a warning that one error for all may mislead.',
  formula: ['F of a one-way analysis of variance of |unit − median of its treatment|'],
  references: [
    'M. B. Brown and A. B. Forsythe (1974), Robust tests for the equality of variances, Journal of the American Statistical Association 69, 364–367.',
  ],
  example(of) {
    const found = testedAnalysis(of)?.checks?.brown_forsythe;
    if (!found || found.f === null || found.p === null) return null;
    return {
      of: 'the units by treatment',
      steps: [
        {
          name: 'F',
          formula: `${say('{value} on {df} and {errorDf} degrees of freedom', {
            value: formatNumber(found.f, 3),
            df: formatDf(found.df1 ?? 0),
            errorDf: formatDf(found.df2 ?? 0),
          })}, ${formatP(found.p)}`,
        },
      ],
    };
  },
};
