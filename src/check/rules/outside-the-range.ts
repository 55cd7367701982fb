import { say } from '../../model/say.ts';
import type { Variable } from '../../model/trial.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { gramsIn, isWeight } from '../../model/units.ts';
import { whereOf } from '../grid.ts';
import { indexesWhere } from '../indexes-where.ts';
import { recordPlace } from '../places.ts';

/** From this many on, and if they are more than half, values are outside for one cause. */
const many = 5;

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
  for (const [number, variable] of (metadata.draft.variables ?? []).entries()) {
    const { id, lowest, highest } = variable;
    if (lowest === undefined && highest === undefined) continue;
    const judged = indexesWhere(harvest.records, ({ values, status }) => {
      const value = values[id];
      // A weight of zero has a rule of its own.
      return typeof value === 'number' && status === 'weighed' && value !== 0;
    });
    for (const side of ['below', 'above'] as const) {
      const outside = judged.filter(
        (index) => rangeFault(harvest.records[index]!.values[id]!, variable) === side,
      );
      if (outside.length === 0) continue;
      const limit = inUnit(String(side === 'below' ? lowest : highest), variable);
      const shownAt = (index: number): string => shown(harvest.records[index]!.values[id]!, variable);
      // Most of a column is outside for one cause, and told once.
      if (outside.length >= many && outside.length > judged.length / 2) {
        const first = shownAt(outside[0]!);
        const values = { count: outside.length, all: judged.length, variable: id, limit, first };
        report(rule, {
          file: 'trial.yaml',
          place: metadata.place(['variables', number, side === 'below' ? 'lowest' : 'highest']),
          found: limit,
          message: say(
            side === 'below'
              ? '{count} of {all} values of {variable} are below the lowest of {limit}, the first of them {first}; is the unit right?'
              : '{count} of {all} values of {variable} are above the highest of {limit}, the first of them {first}; is the unit right?',
            values,
          ),
        });
        continue;
      }
      for (const index of outside) {
        const found = shownAt(index);
        report(rule, {
          file: 'harvest.csv',
          place: recordPlace(harvest, index, id),
          found,
          message: say(
            side === 'below'
              ? '{variable} is {value}, below the lowest of {limit}'
              : '{variable} is {value}, above the highest of {limit}',
            { variable: id, value: found, limit },
          ),
          where: whereOf(harvest.records[index]!),
        });
      }
    }
  }
}

const inUnit = (number: string, { unit = '' }: Variable): string => `${number} ${unit}`.trim();

/** A value in the variable's own unit, without what binary arithmetic may have added. */
const shown = (value: number, variable: Variable): string =>
  inUnit(String(Number((value / gramsOf(variable)).toPrecision(12))), variable);

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
