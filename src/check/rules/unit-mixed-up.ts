import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { whereOf } from '../grid.ts';
import { recordPlace } from '../places.ts';
import { inGrams } from '../totals.ts';
import { weighingsOf } from '../weighings.ts';

const rule: Rule = {
  rule: 'unit-mixed-up',
  severity: 'warning',
  acceptable: true,
  title: 'Weight in another unit',
  meaning:
    'A weight about 1000, 28.35 or 453.6 times its fellows, or as many times smaller, was probably read in kilograms, ounces or pounds; one about 10 times, with a slipped decimal mark.',
  example: 'fresh_weight is 0.142 g, about 1000 times less than its fellows (151 g); was it in kg?',
  check,
};
export default rule;

/** How many fellows must be there to tell what is usual. */
const fewestFellows = 4;
/** Plants differ by this factor from the middle of their fellows and no more. */
const spread = 1.6;

const slips: readonly [factor: number, fellowsAreLess: string, fellowsAreMore: string][] = [
  [1000, 'was it in mg?', 'was it in kg?'],
  [453.59237, 'is the unit right?', 'was it in lb?'],
  [28.349523125, 'is the unit right?', 'was it in oz?'],
  [10, 'is the decimal mark right?', 'is the decimal mark right?'],
];

function check(facts: Facts, report: Report): void {
  const weighings = weighingsOf(facts);
  if (weighings === null) return;
  const { variable, harvest, fellows } = weighings;
  for (const { members, usual } of fellows) {
    if (members.length < fewestFellows) continue;
    for (const { index, record, weight } of members) {
      const ratio = weight / usual;
      if (ratio < 6 && ratio > 1 / 15) continue;
      const slip = slips.find(([factor]) => isAbout(Math.max(ratio, 1 / ratio), factor));
      if (slip === undefined || (slip[0] === 10 && ratio < 1)) continue;
      const [factor, more, less] = slip;
      const relation = ratio > 1 ? 'more' : 'less';
      const message = `${variable.id} is ${inGrams(weight)}, about ${String(Number(factor.toFixed(1)))} times ${relation} than its fellows (${inGrams(usual)}); ${ratio > 1 ? more : less}`;
      report(rule, {
        file: 'harvest.csv',
        place: recordPlace(harvest, index, variable.id),
        found: inGrams(weight),
        message,
        where: whereOf(record),
      });
    }
  }
}

function isAbout(ratio: number, factor: number): boolean {
  return ratio > factor / spread && ratio < factor * spread;
}
