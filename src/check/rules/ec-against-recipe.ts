import { ecRange } from '../../compute/nutrients/ec-estimates.ts';
import { solutionOf } from '../../compute/nutrients/solution.ts';
import { atStrength, strengthOf } from '../../compute/nutrients/strength-of.ts';
import { agreesWith } from '../../compute/nutrients/warnings.ts';
import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { reportInOne } from '../containers-in-one.ts';
import { readingPlace } from '../places.ts';
import { isRecipeWhole } from '../recipe-warnings.ts';
import type { Finding, Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'ec-against-recipe',
  severity: 'warning',
  acceptable: true,
  title: 'Solution unlike its recipe',
  meaning:
    'What the meter showed when the container was filled lies more than 30 in a hundred outside what several published formulas expect of the recipe: a salt was weighed wrongly, the recipe is another, or the meter needs its standard.',
  example: 'ec of T1 is 0.9, but the recipe should give 1.6 to 1.8',
  check,
};
export default rule;

function check({ metadata, readings }: Facts, report: Report): void {
  const { nutrients, factors = [], containers = [] } = metadata.draft;
  if (nutrients?.salts === undefined || readings === null || !isRecipeWhole(metadata)) return;
  if (metadata.lost.has('factors') || metadata.lost.has('containers')) return;
  const odd: Finding[] = [];
  const seen = new Set<string>();
  for (const [index, { container, ec }] of readings.rows.entries()) {
    if (ec === null || ec === 0 || seen.has(container)) continue;
    seen.add(container);
    const treatment = containers.find(({ id }) => id === container)?.treatment;
    const strength = strengthOf(treatment, factors);
    if (strength === null) continue;
    const range = ecRange(solutionOf(atStrength(nutrients, strength)).ec);
    if (range === null || agreesWith(range, ec)) continue;
    const expected = say('{minimum} to {maximum}', {
      minimum: range.lowest.toFixed(1),
      maximum: range.highest.toFixed(1),
    });
    const message = say(
      'ec of {container} is {ec} mS/cm at its first reading, but the recipe should give {expected}; check the salts, the recipe and the meter',
      { container, ec, expected },
    );
    odd.push({
      file: 'readings.csv',
      place: readingPlace(readings, index, 'ec'),
      found: String(ec),
      expected,
      message,
      where: container,
    });
  }
  // They were filled from one recipe and read with one meter.
  reportInOne(report, rule, odd, metadata);
}
