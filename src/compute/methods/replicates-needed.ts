import { say } from '../../model/say.ts';
import { formatPercent } from '../format/format-percent.ts';
import type { Method } from './method.ts';

export const replicatesNeeded: Method = {
  id: 'replicates-needed',
  name: 'Replicates needed',
  use: 'How many units of each treatment the next trial needs to tell a given difference, at 80 and 90% power, from this trial’s own error or, where it has none, from the site’s other trials of the crop.',
  formula: [
    'the smallest r at which a difference, held against t on the whole trial’s error, passes the 5% bound with the wanted power',
    'noncentrality of t = difference ÷ (CV × √(2 ÷ r)), both in percent of the mean',
  ],
  references: ['H. Scheffé (1959), The Analysis of Variance, Wiley.'],
  example({ findings }) {
    const found = findings.next_trial.find(({ replicates_needed: needed }) => needed !== null);
    if (!found || found.replicates_needed === null) return null;
    const values = {
      count: found.replicates_needed,
      difference: formatPercent(found.difference_percent, 0),
      power: formatPercent(found.power * 100, 0),
    };
    return {
      of: found.from,
      steps: [
        {
          name: 'Replicates',
          formula:
            found.cv_used === null
              ? say('{count} to tell {difference} apart at {power} power', values)
              : say('{count} to tell {difference} apart at {power} power with a CV of {cv}', {
                  ...values,
                  cv: formatPercent(found.cv_used, 1),
                }),
        },
      ],
    };
  },
};
