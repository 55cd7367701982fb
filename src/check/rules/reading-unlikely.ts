import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { readingPlace } from '../places.ts';

const rule: Rule = {
  rule: 'reading-unlikely',
  severity: 'warning',
  acceptable: true,
  title: 'Unlikely reading',
  meaning:
    'The reading lies where no solution with plants in it lies: a decimal mark lost, a unit mistaken, or two columns exchanged.',
  example: 'ph is 62; was it 6.2?',
  check,
};
export default rule;

/** Bounds within which solutions with living plants in them lie; common practice, no source. */
const bounds = { level: [0, 200], ec: [0, 10], ph: [3, 10], temperature: [-5, 50] } as const;

function check({ readings }: Facts, report: Report): void {
  for (const [index, reading] of (readings?.rows ?? []).entries()) {
    for (const [name, [lowest, highest]] of Object.entries(bounds)) {
      const value = reading[name as keyof typeof bounds];
      if (value === null || (value >= lowest && value <= highest)) continue;
      const tenth = [10, 100, 1000].map((by) => value / by).find((one) => one >= lowest && one <= highest);
      const asks =
        value > highest && tenth !== undefined ? `; was it ${String(Number(tenth.toPrecision(4)))}?` : '';
      const message = `${name} is ${String(value)}, outside ${String(lowest)} to ${String(highest)}${asks}`;
      const place = readingPlace(readings!, index, name);
      report(rule, { file: 'readings.csv', place, found: String(value), message, where: reading.container });
    }
  }
}
