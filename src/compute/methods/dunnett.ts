import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatP } from '../format/format-p.ts';
import { treatmentName } from '../format/level-names.ts';
import type { Method } from './method.ts';

export const dunnett: Method = {
  id: 'dunnett',
  name: 'Against the check: Dunnett',
  use: 'Each level less the check cultivar, with limits and p that hold for all of these at once. Narrower than looking at every pair, because fewer are looked at. Two-sided. Where blocks or plants are not balanced, so that the differences are related in no simple way, the chance is computed on a fixed lattice of points, to about a millionth where a few plants are missing and about one part in ten thousand in the worst cases; for more than 12 such differences, or where they all but fix one another, it is averaged over evenly spread directions with the seed 1955, and is good to about one part in a thousand.',
  formula: [
    't = difference ÷ its standard error',
    'adjusted p = chance that the largest |t| of so many differences from one check is as large or larger',
  ],
  references: [
    'C. W. Dunnett (1955), A multiple comparison procedure for comparing several treatments with a control, Journal of the American Statistical Association 50, 1096–1121.',
    'R. L. Plackett (1954), A reduction formula for normal multivariate integrals, Biometrika 41, 351–360.',
    'A. Genz (1992), Numerical computation of multivariate normal probabilities, Journal of Computational and Graphical Statistics 1, 141–149.',
  ],
  example({ trial, findings, names }) {
    for (const { against_check: rows, alpha } of findings.inference) {
      const row = rows.find((each) => each.estimate !== null && each.p_adjusted !== null);
      if (
        !row ||
        row.estimate === null ||
        row.p_adjusted === null ||
        row.lower === null ||
        row.upper === null
      )
        continue;
      const plus = { plus: true };
      const formula = say('{estimate}, limits {lower} to {upper}, {p}', {
        estimate: formatNumber(row.estimate, 1, plus),
        lower: formatNumber(row.lower, 1, plus),
        upper: formatNumber(row.upper, 1, plus),
        p: formatP(row.p_adjusted, alpha),
      });
      return { of: treatmentName(trial, row.treatment, names), steps: [{ name: 'Less the check', formula }] };
    }
    return null;
  },
};
