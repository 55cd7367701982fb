import { formatNumber } from '../format/format-number.ts';
import type { Method } from './method.ts';

export const leastSignificantDifference: Method = {
  id: 'least-significant-difference',
  name: 'Least significant difference',
  use: 'The difference that a single pair, chosen beforehand, would have to reach. Given only where F is significant and the replication equal; for pairs picked after looking, Tukey–Kramer is the one to read.',
  formula: ['least significant difference = t(0.975, error df) × standard error of a difference'],
  references: ['R. A. Fisher (1935), The Design of Experiments, Oliver and Boyd.'],
  example({ findings }) {
    const found = findings.inference.find((each) => each.least_significant_difference !== null);
    if (!found || found.least_significant_difference === null) return null;
    const { unit } = findings.variable;
    return {
      of: found.model,
      steps: [{ name: 'It is', formula: `${formatNumber(found.least_significant_difference, 1)} ${unit}` }],
    };
  },
};
