import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { recordPlace } from '../places.ts';
import { inGrams } from '../totals.ts';
import { weighingsOf, type Weighing } from '../weighings.ts';

const rule: Rule = {
  rule: 'unlikely-spread',
  severity: 'warning',
  acceptable: true,
  title: 'Spread that is too small or too large',
  meaning:
    'Plants of one treatment mostly differ by 10 to 30 in a hundred. Far less looks like weights shared out evenly; far more, like two kinds of plants or of units.',
  example: 'the 12 weights of cultivar cobalt-wren differ by 0.8 in a hundred (CV)',
  check,
};
export default rule;

const fewest = 6;
/** Coefficients of variation in percent beyond which a colleague would ask; common practice, no source. */
const smallest = 2;
const largest = 60;

function check(facts: Facts, report: Report): void {
  const weighings = weighingsOf(facts);
  if (weighings === null) return;
  const { harvest, variable, fellows } = weighings;
  for (const { name, inWords, members, usual } of fellows) {
    // Single weights far from the rest are asked after one by one (unit-mixed-up).
    const { near, mean, cv } = spreadOf(members, usual);
    if (near.length < fewest) continue;
    if (cv >= smallest && cv <= largest) continue;
    const values = { count: near.length, name: inWords(), cv: cv.toFixed(1), mean: inGrams(mean) };
    const message =
      cv < smallest
        ? say(
            'the {count} weights of {name} hardly differ (CV {cv}%, mean {mean}); were all weighed singly, and in one unit?',
            values,
          )
        : say(
            'the {count} weights of {name} differ very much (CV {cv}%, mean {mean}); were all weighed singly, and in one unit?',
            values,
          );
    const place = recordPlace(harvest, near[0]!.index, variable.id);
    report(rule, { file: 'harvest.csv', place, found: `${cv.toFixed(1)}%`, message, where: name });
  }
}

/** The weights that are not far from the usual one, their mean and their coefficient of variation in percent. */
function spreadOf(
  members: readonly Weighing[],
  usual: number,
): { near: readonly Weighing[]; mean: number; cv: number } {
  const near: Weighing[] = [];
  let sum = 0;
  for (const one of members) {
    if (one.weight >= usual * 6 || one.weight <= usual / 15) continue;
    near.push(one);
    sum += one.weight;
  }
  const mean = sum / near.length;
  let squares = 0;
  for (const { weight } of near) squares += (weight - mean) ** 2;
  return { near, mean, cv: (100 * Math.sqrt(squares / (near.length - 1))) / mean };
}
