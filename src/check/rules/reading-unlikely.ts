import { say } from '../../model/say.ts';
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
    for (const name of Object.keys(bounds) as (keyof typeof bounds)[]) {
      const value = reading[name];
      const unlikely = value === null ? null : unlikelyReading(name, value);
      if (value === null || unlikely === null) continue;
      const { lowest, highest, perhaps } = unlikely;
      const values = { name, value, lowest, highest };
      const message =
        perhaps === null
          ? say('{name} is {value}, outside {lowest} to {highest}', values)
          : say('{name} is {value}, outside {lowest} to {highest}; was it {perhaps}?', {
              ...values,
              perhaps,
            });
      const place = readingPlace(readings!, index, name);
      report(rule, { file: 'readings.csv', place, found: String(value), message, where: reading.container });
    }
  }
}

/** The bounds that a reading lies outside of, and what it perhaps was. */
export interface UnlikelyReading {
  lowest: number;
  highest: number;
  /** The value with its decimal mark put back; null where that makes none between the bounds. */
  perhaps: number | null;
}

/** Why a reading of that name is unlikely; null where it is not, or has no bounds. */
export function unlikelyReading(name: string, value: number): UnlikelyReading | null {
  const [lowest, highest] = Object.hasOwn(bounds, name)
    ? bounds[name as keyof typeof bounds]
    : [-Infinity, Infinity];
  if (value >= lowest && value <= highest) return null;
  const tenth = [10, 100, 1000].map((by) => value / by).find((one) => one >= lowest && one <= highest);
  const perhaps = value > highest && tenth !== undefined ? Number(tenth.toPrecision(4)) : null;
  return { lowest, highest, perhaps };
}
