import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { recordPlace } from '../places.ts';
import { inGrams } from '../totals.ts';
import { weighingsOf } from '../weighings.ts';

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
  for (const { name, members, usual } of fellows) {
    // Single weights far from the rest are asked after one by one (unit-mixed-up).
    const near = members.filter(({ weight }) => weight < usual * 6 && weight > usual / 15);
    if (near.length < fewest) continue;
    const mean = near.reduce((sum, { weight }) => sum + weight, 0) / near.length;
    const squares = near.reduce((sum, { weight }) => sum + (weight - mean) ** 2, 0);
    const cv = (100 * Math.sqrt(squares / (near.length - 1))) / mean;
    if (cv >= smallest && cv <= largest) continue;
    const judgement = cv < smallest ? 'hardly differ' : 'differ very much';
    const message = `the ${String(near.length)} weights of ${name} ${judgement} (CV ${cv.toFixed(1)}%, mean ${inGrams(mean)}); were all weighed singly, and in one unit?`;
    const place = recordPlace(harvest, near[0]!.index, variable.id);
    report(rule, { file: 'harvest.csv', place, found: `${cv.toFixed(1)}%`, message, where: name });
  }
}
