import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import { treatmentName } from '../format/level-names.ts';
import { unitName } from '../format/unit-name.ts';
import { digitsFor } from '../tables/treatment-summary.ts';
import type { Example, ExampleTrial, Method } from './method.ts';

export const fiveNumberSummary: Method = {
  id: 'five-number-summary',
  name: 'Lowest, quartiles, highest',
  use: 'Where the values lie: half of them below the median, a quarter below the lower quartile, a quarter above the upper.',
  formula: [
    'values in ascending order, x(1) to x(n)',
    'place h = (n − 1) × share + 1, the share being ¼, ½ or ¾',
    'quartile = x(whole part of h) + (rest of h) × (next value − that value)',
  ],
  remarks: ['There are several definitions of a quartile; this is the seventh of Hyndman and Fan.'],
  references: [
    'R. J. Hyndman and Y. Fan (1996), Sample quantiles in statistical packages, The American Statistician 50, 361–365.',
  ],
  example,
};

function example({ trial, findings, names }: ExampleTrial): Example | null {
  const description = findings.treatments.find(
    ({ per_plant_harvested: summary }) => summary !== null && summary.median !== null,
  );
  const summary = description?.per_plant_harvested;
  if (!description || !summary) return null;
  const digits = digitsFor(trial, [summary]);
  const { minimum, lower_quartile: lower, median, upper_quartile: upper, maximum, n } = summary;
  const text = (value: number | null) =>
    value === null ? '' : `${formatNumber(value, digits)} ${unitName(findings.variable.unit)}`;
  return {
    of: `${treatmentName(trial, description.treatment, names)}, ${say('per plant harvested')}`,
    steps: [
      {
        name: 'Place of the lower quartile',
        formula: `h = (${n} − 1) × ¼ + 1 = ${formatNumber((n - 1) / 4 + 1, 2)}`,
      },
      { name: 'Lowest to highest', formula: [minimum, lower, median, upper, maximum].map(text).join(', ') },
    ],
  };
}
