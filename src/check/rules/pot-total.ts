import { say, sayCount } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { whereOf } from '../grid.ts';
import { unitInFile } from '../harvest-columns.ts';
import { recordPlace } from '../places.ts';
import { recordsByPosition } from '../records-by-position.ts';
import {
  inGrams,
  isBeyondRounding,
  mostByRounding,
  partsOf,
  stepInGrams,
  swappedDigits,
  weighedVariable,
} from '../totals.ts';

const rule: Rule = {
  rule: 'pot-total',
  severity: 'error',
  acceptable: true,
  title: 'Total of a pot differs from its plants',
  meaning:
    'A total weighed for the pot and the weights of its plants check each other; they may differ by rounding and by no more. A total that stands on several rows of the pot is alike on all.',
  example: 'pot_total is 412 g, but the 3 plants sum to 421 g',
  check,
};
export default rule;

function check({ metadata, harvest, layout }: Facts, report: Report): void {
  const variable = weighedVariable(metadata.draft.variables);
  if (
    variable === null ||
    harvest === null ||
    layout === null ||
    !harvest.records.some(({ potTotal }) => potTotal !== null)
  )
    return;
  const unit = metadata.draft.harvest?.columns?.['pot_total']?.unit ?? unitInFile(metadata, variable);
  const { at } = recordsByPosition(harvest);
  for (let position = 0; position < layout.positions.length; position += 1) {
    const indexes = at(position);
    const byCut = Map.groupBy(indexes, (index) => harvest.records[index]!.cut);
    for (const inCut of byCut.values()) {
      const withTotal = inCut.filter((index) => harvest.records[index]!.potTotal !== null);
      const first = withTotal[0];
      if (first === undefined) continue;
      const record = harvest.records[first]!;
      const total = record.potTotal!;
      const other = withTotal.find((index) => harvest.records[index]!.potTotal !== total);
      if (other !== undefined) {
        const found = harvest.records[other]!.potTotal!;
        const message = say(
          'pot_total is {found} here, but {total} in line {line} of the same pot; write it once, or alike',
          { found: inGrams(found), total: inGrams(total), line: String(record.line) },
        );
        report(rule, {
          file: 'harvest.csv',
          place: recordPlace(harvest, other, 'pot_total'),
          found: inGrams(found),
          message,
          where: whereOf(record),
        });
        continue;
      }
      const parts = partsOf(
        inCut.map((index) => harvest.records[index]!),
        variable.id,
      );
      const step = stepInGrams(variable, total, unit === 'kg' ? 'g' : unit);
      if (parts === null || !isBeyondRounding(total, parts, step)) continue;
      const sum = inGrams(parts.sum);
      const message = sayCount(
        parts.n,
        'pot_total is {total}, but the plant weighs {sum}: rounding explains {most}',
        'pot_total is {total}, but the {count} weights of the pot sum to {sum}: rounding explains {most}',
        { total: inGrams(total), sum, most: inGrams(mostByRounding(parts.n, step)) },
      );
      report(rule, {
        file: 'harvest.csv',
        place: recordPlace(harvest, first, 'pot_total'),
        found: inGrams(total),
        expected: sum,
        message: `${message}${swappedDigits(total, parts.sum)}`,
        where: whereOf(record),
      });
    }
  }
}
