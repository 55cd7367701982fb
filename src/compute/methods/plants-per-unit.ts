import { sayCount } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import { testedAnalysis } from './examples.ts';
import type { Method } from './method.ts';

export const plantsPerUnitMethod: Method = {
  id: 'plants-per-unit',
  name: 'Plants worth weighing in each unit',
  use: 'What fewer or more plants weighed in each unit would make of the variance of a treatment’s mean. More plants make up for differences between plants only: what units differ by takes more units.',
  formula: [
    'variance of a mean, for a given number of units, goes with: variance between units + variance between plants ÷ plants of each unit',
  ],
  references: [
    'R. G. D. Steel and J. H. Torrie (1980), Principles and Procedures of Statistics, 2nd edition, McGraw-Hill, section 7.9.',
  ],
  example(of) {
    const worth = testedAnalysis(of)?.plants_per_unit;
    const [first] = worth?.gain ?? [];
    if (!worth || !first || worth.unit_variance === null || worth.plant_variance === null) return null;
    const [units, plants] = [Math.max(0, worth.unit_variance), worth.plant_variance];
    const text = (value: number) => formatNumber(value, 1);
    return {
      of: sayCount(
        first.plants,
        '{count} plant of each unit in place of {weighed}',
        '{count} plants of each unit in place of {weighed}',
        { weighed: formatNumber(worth.weighed, Number.isInteger(worth.weighed) ? 0 : 1) },
      ),
      steps: [
        {
          name: 'Variance, %',
          formula:
            `100 × (${text(units)} + ${text(plants)} ÷ ${first.plants}) ÷ (${text(units)} + ${text(plants)} ÷ ` +
            `${text(worth.weighed)}) = ${formatNumber(first.variance_percent, 0)}`,
        },
      ],
    };
  },
};
