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
  for (const { id, unit = '', lowest, highest } of metadata.draft.variables ?? []) {
    if ((lowest === undefined && highest === undefined) || (lowest ?? 0) > (highest ?? Infinity)) continue;
    const grams = isWeight(unit) ? (gramsIn[unit] ?? 1) : 1;
    const [least, most] = [(lowest ?? -Infinity) * grams, (highest ?? Infinity) * grams];
    const outside = indexesWhere(harvest.records, ({ values, status }) => {
      const value = values[id];
      // A weight of zero has a rule of its own.
      const isJudged = typeof value === 'number' && status === 'weighed' && value !== 0;
      return isJudged && (value < least || value > most);
    });
    for (const index of outside) {
      const record = harvest.records[index]!;
      const value = record.values[id]!;
      const shown = `${String(Number((value / grams).toPrecision(12)))} ${unit}`.trim();
      const limit =
        value < least ? `below the lowest of ${String(lowest)}` : `above the highest of ${String(highest)}`;
      const message = `${id} is ${shown}, ${limit} ${unit}`.trim();
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
