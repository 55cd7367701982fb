import { say } from '../../model/say.ts';
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
    for (const { index, record, weight } of members) {
      const slip = unitSlip(weight, usual);
      if (slip === null) continue;
      const values = {
        variable: variable.id,
        weight: inGrams(weight),
        factor: slip.factor,
        usual: inGrams(usual),
        question: say(slip.question),
      };
      const message =
        slip.relation === 'more'
          ? say(
              '{variable} is {weight}, about {factor} times more than its fellows ({usual}); {question}',
              values,
            )
          : say(
              '{variable} is {weight}, about {factor} times less than its fellows ({usual}); {question}',
              values,
            );
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

/** How a weight stands to its fellows where it looks like one in another unit. */
export interface UnitSlip {
  /** To one decimal: 1000, 453.6, 28.3 or 10. */
  factor: number;
  relation: 'more' | 'less';
  /** What to ask: a message of its own. */
  question: string;
}

/**
 * The slip of unit or decimal mark that sets a weight apart from its fellows; null where there is none.
 *
 * @param weight g
 * @param usual the middle weight of its fellows in g; 0 where there are too few to tell
 */
export function unitSlip(weight: number, usual: number): UnitSlip | null {
  const ratio = weight / usual;
  if (usual === 0 || weight === 0 || (ratio < 6 && ratio > 1 / 15)) return null;
  const slip = slips.find(([factor]) => isAbout(Math.max(ratio, 1 / ratio), factor));
  if (slip === undefined || (slip[0] === 10 && ratio < 1)) return null;
  const [factor, more, less] = slip;
  const relation = ratio > 1 ? 'more' : 'less';
  return { factor: Number(factor.toFixed(1)), relation, question: ratio > 1 ? more : less };
}

function isAbout(ratio: number, factor: number): boolean {
  return ratio > factor / spread && ratio < factor * spread;
}
