import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { whereOf } from '../grid.ts';
import { recordPlace } from '../places.ts';
import { inGrams } from '../totals.ts';
import { chanceOfTie, weighingsOf } from '../weighings.ts';

const rule: Rule = {
  rule: 'identical-run',
  severity: 'warning',
  acceptable: true,
  title: 'Run of identical weights',
  meaning:
    'Weights alike in several rows on end are more than chance explains: a cell was dragged down, or a weight repeated from memory.',
  example: '5 rows on end have 142 g (lines 4 to 8)',
  check,
};
export default rule;

const shortest = 4;
/** A run longer than chance gives once in a hundred such files. */
const unlikely = 0.01;

function check(facts: Facts, report: Report): void {
  const weighings = weighingsOf(facts);
  if (weighings === null) return;
  const { variable, harvest, all } = weighings;
  const tie = chanceOfTie(all);
  let start = 0;
  for (let at = 1; at <= all.length; at += 1) {
    if (at < all.length && all[at]!.weight === all[start]!.weight) continue;
    const length = at - start;
    // A run at a given place has the chance tie^(length - 1); there are as many places as rows.
    if (length >= shortest && all.length * tie ** (length - 1) < unlikely) {
      const [first, last] = [all[start]!, all[at - 1]!];
      const message = say(
        '{count} rows on end have {weight} (lines {first} to {last}); was one weight filled down?',
        {
          count: length,
          weight: inGrams(first.weight),
          first: first.record.line,
          last: last.record.line,
        },
      );
      report(rule, {
        file: 'harvest.csv',
        place: recordPlace(harvest, first.index, variable.id),
        found: inGrams(first.weight),
        message,
        where: whereOf(first.record),
      });
    }
    start = at;
  }
}
