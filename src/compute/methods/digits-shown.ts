import { sayCount } from '../../model/say.ts';
import { digitsOfMean } from '../format/digits-of-mean.ts';
import { formatNumber } from '../format/format-number.ts';
import { printedResolution } from '../format/printed-resolution.ts';
import type { Method } from './method.ts';

export const digitsShown: Method = {
  id: 'digits-shown',
  name: 'How many digits are shown',
  use: 'A mean is shown no finer than the scale’s own rounding allows. Files for download hold full precision.',
  formula: [
    'a reading on a scale of step r is uncertain by r ÷ √12, a mean of n readings by r ÷ √(12\u00a0n)',
    'the last digit shown is the smallest power of ten not below that',
  ],
  remarks: [
    'US units are exact multiples: 1 oz = 28.349523125 g, 1 lb = 453.59237 g, 1 ft² = 0.09290304 m², 1 US gal = 3.785411784 L.',
  ],
  references: [
    'JCGM 100:2008, Evaluation of measurement data: guide to the expression of uncertainty in measurement, F.2.2.1 and 7.2.6.',
  ],
  example({ trial, findings }) {
    const resolution = printedResolution(trial.metadata.variables[0]);
    const summary = findings.treatments[0]?.per_plant_harvested ?? findings.treatments[0]?.per_pot;
    if (resolution === null || !summary || summary.n < 1) return null;
    const uncertainty = formatNumber(resolution / Math.sqrt(12 * summary.n), 3);
    const decimals = Math.max(0, digitsOfMean(resolution, summary.n));
    return {
      of: sayCount(summary.n, '{count} weight read to {step} g', '{count} weights read to {step} g', {
        step: resolution,
      }),
      steps: [
        {
          name: 'Decimals',
          formula: `${resolution} ÷ √(12 × ${summary.n}) = ${uncertainty} g, ${sayCount(decimals, 'so {count} decimal', 'so {count} decimals')}`,
        },
      ],
    };
  },
};
