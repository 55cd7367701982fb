import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { expectedEc } from '../expected-ec.ts';
import { readingPlace } from '../places.ts';

const rule: Rule = {
  rule: 'ec-against-recipe',
  severity: 'warning',
  acceptable: true,
  title: 'Solution unlike its recipe',
  meaning:
    'What the salts should conduct and what the meter showed when the container was filled differ by more than 30 in a hundred: a salt was weighed wrongly, the recipe is another, or the meter needs its standard.',
  example: 'ec of T1 is 0.9, but the recipe gives about 1.7',
  check,
};
export default rule;

/** By how much a rule of thumb and a hand meter may differ. */
const most = 1.3;

function check({ metadata, readings }: Facts, report: Report): void {
  const { nutrients, factors = [], containers = [] } = metadata.draft;
  const full = nutrients === undefined ? null : expectedEc(nutrients);
  if (full === null || readings === null) return;
  const seen = new Set<string>();
  for (const [index, { container, ec }] of readings.rows.entries()) {
    if (ec === null || ec === 0 || seen.has(container)) continue;
    seen.add(container);
    const treatment = containers.find(({ id }) => id === container)?.treatment;
    const strength = strengthOf(treatment, factors);
    if (strength === null) continue;
    const expected = full * strength;
    const ratio = ec / expected;
    if (ratio <= most && ratio >= 1 / most) continue;
    const about = expected.toFixed(1);
    const message = `ec of ${container} is ${String(ec)} mS/cm at its first reading, but the recipe gives about ${about}; check the salts, the recipe and the meter`;
    report(rule, {
      file: 'readings.csv',
      place: readingPlace(readings, index, 'ec'),
      found: String(ec),
      expected: about,
      message,
      where: container,
    });
  }
}

/** How many times the recipe a container was filled with; null where a treatment may have changed the recipe itself. */
function strengthOf(
  treatment: Readonly<Record<string, string>> | undefined,
  factors: NonNullable<Facts['metadata']['draft']['factors']> | [],
): number | null {
  let strength = 1;
  for (const { id, kind } of factors) {
    if (kind === 'cultivar' || id === 'plants_per_pot') continue;
    const level = Number(treatment?.[id]);
    if (id !== 'strength' || !(level > 0)) return null;
    strength = level;
  }
  return strength;
}
