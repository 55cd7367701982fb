import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { readingPlace } from '../places.ts';

const rule: Rule = {
  rule: 'reading-twice',
  severity: 'warning',
  acceptable: true,
  title: 'Two readings of one day',
  meaning: 'A container read twice on a day may be a row copied, or a container mistaken for another.',
  example: 'T1 has a reading of 2025-10-02 already, in line 9',
  check,
};
export default rule;

function check({ readings }: Facts, report: Report): void {
  const lines = new Map<string, number>();
  for (const [index, { container, date, line, level, ec, ph, temperature }] of (
    readings?.rows ?? []
  ).entries()) {
    // Rows that only note water added may well follow each other on a day.
    if (level === null && ec === null && ph === null && temperature === null) continue;
    const key = `${container} ${date}`;
    const before = lines.get(key);
    if (before === undefined) lines.set(key, line);
    else {
      const message = say(
        '{container} has a reading of {date} already, in line {line}; check the container and the date',
        { container, date, line: before },
      );
      report(rule, {
        file: 'readings.csv',
        place: readingPlace(readings!, index, 'container'),
        found: key,
        message,
        where: container,
      });
    }
  }
}
