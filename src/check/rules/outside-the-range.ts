import { say } from '../../model/say.ts';
import type { Variable } from '../../model/trial.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { gramsIn, isWeight } from '../../model/units.ts';
import { whereOf } from '../grid.ts';
import { indexesWhere } from '../indexes-where.ts';
import { recordPlace } from '../places.ts';

const rule: Rule = {
  rule: 'outside-the-range',
  severity: 'warning',
  acceptable: true,
  title: 'Outside lowest and highest',
  meaning: 'The value lies outside what the grower declared would not surprise.',
  example: 'fresh_weight is 1310 g, above the highest of 600 g',
  check,
};
export default rule;

function check({ metadata, harvest }: Facts, report: Report): void {
  if (harvest === null) return;
  for (const variable of metadata.draft.variables ?? []) {
    const { id, unit = '', lowest, highest } = variable;
    if (lowest === undefined && highest === undefined) continue;
    const outside = indexesWhere(harvest.records, ({ values, status }) => {
      const value = values[id];
      // A weight of zero has a rule of its own.
      const isJudged = typeof value === 'number' && status === 'weighed' && value !== 0;
      return isJudged && rangeFault(value, variable) !== null;
    });
    for (const index of outside) {
      const record = harvest.records[index]!;
      const value = record.values[id]!;
      const shown = `${String(Number((value / gramsOf(variable)).toPrecision(12)))} ${unit}`.trim();
      const isBelow = rangeFault(value, variable) === 'below';
      const limit = `${String(isBelow ? lowest : highest)} ${unit}`.trim();
      const message = say(
        isBelow
          ? '{variable} is {value}, below the lowest of {limit}'
          : '{variable} is {value}, above the highest of {limit}',
        { variable: id, value: shown, limit },
      );
      report(rule, {
        file: 'harvest.csv',
        place: recordPlace(harvest, index, id),
        found: shown,
        message,
        where: whereOf(record),
      });
    }
  }
}

/** g in the variable's unit; 1 where that is no unit of weight. */
const gramsOf = ({ unit = '' }: Variable): number => (isWeight(unit) ? (gramsIn[unit] ?? 1) : 1);

/** On which side of lowest and highest a value lies, in g or in the variable's own unit; null where between them. */
export function rangeFault(value: number, variable: Variable): 'below' | 'above' | null {
  const { lowest = -Infinity, highest = Infinity } = variable;
  const grams = gramsOf(variable);
  // Limits that contradict each other say nothing.
  if (lowest > highest) return null;
  if (value < lowest * grams) return 'below';
  return value > highest * grams ? 'above' : null;
}
