import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { isReadingOutside } from './date-outside-the-trial.ts';
import { readingPlace } from '../places.ts';

const rule: Rule = {
  rule: 'level-rise',
  severity: 'warning',
  acceptable: true,
  title: 'Level that rises by itself',
  meaning:
    'Plants drink and water evaporates, so the level falls. A rise with no water added and no rain means a reading or a filling that was not written down.',
  example: 'the level of T1 rose from 7.2 to 9.8 cm with no water added and no rain',
  check,
};
export default rule;

function check({ readings, metadata, today }: Facts, report: Report): void {
  if (readings === null) return;
  const last = new Map<string, { level: number; line: number; watered: boolean }>();
  const inOrder = [...readings.rows.entries()].sort(([i, a], [j, b]) =>
    a.date < b.date ? -1 : a.date > b.date ? 1 : i - j,
  );
  for (const [index, { container, level, added, rain, date }] of inOrder) {
    // A date that is told to be wrong puts the reading in a wrong place.
    if (readings.doubted.has(container) || date > today || isReadingOutside(metadata, date)) continue;
    const before = last.get(container);
    const hasRain = (rain ?? 0) > 0;
    if (before !== undefined && level !== null && level > before.level && !before.watered && !hasRain) {
      report(rule, {
        file: 'readings.csv',
        place: readingPlace(readings, index, 'level'),
        found: String(level),
        message: say(
          'the level of {container} rose from {before} cm (line {line}) to {level} cm with no water added and no rain in between',
          { container, before: before.level, line: before.line, level },
        ),
        where: container,
      });
    }
    // The level is read before that row's water goes in, so the water counts for the next reading.
    const hasWater = (added ?? 0) > 0;
    if (level !== null) last.set(container, { level, line: readings.rows[index]!.line, watered: hasWater });
    else if (before !== undefined) before.watered ||= hasWater || hasRain;
  }
}
