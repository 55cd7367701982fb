import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { readingPlace } from '../places.ts';
import { fullDepth } from './unlikely-size.ts';

const rule: Rule = {
  rule: 'reading-unlikely',
  severity: 'warning',
  acceptable: true,
  title: 'Unlikely reading',
  meaning:
    'The reading lies where no solution with plants in it lies, or the level far above what the container holds: a decimal mark lost, a unit mistaken, or two columns exchanged.',
  example: 'ph is 62; was it 6.2?',
  check,
};
export default rule;

/** Bounds within which solutions with living plants in them lie; common practice, no source. */
const bounds = { level: [0, 200], ec: [0, 10], ph: [3, 10], temperature: [-5, 50] } as const;

/** A level may lie so many times as high as the full container's volume stands in it, whose walls may slope. */
const mostTimesFull = 2;

function check({ metadata, readings }: Facts, report: Report): void {
  checkLevels({ metadata, readings }, report);
  for (const [index, reading] of (readings?.rows ?? []).entries()) {
    for (const name of Object.keys(bounds) as (keyof typeof bounds)[]) {
      const value = reading[name];
      const unlikely = value === null ? null : unlikelyReading(name, value);
      if (value === null || unlikely === null) continue;
      const { lowest, highest, perhaps } = unlikely;
      const values = { name, value, lowest, highest };
      const celsius = name === 'temperature' ? fromFahrenheit(value) : null;
      const message =
        celsius !== null
          ? say('{name} is {value}, outside {lowest} to {highest}; is it in °F? Then write {celsius}', {
              ...values,
              celsius,
            })
          : perhaps === null
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

/** A water temperature in degrees C of what was read in F; null where none comes out of it. */
function fromFahrenheit(value: number): number | null {
  const celsius = ((value - 32) * 5) / 9;
  const [, highest] = bounds.temperature;
  return value > highest && celsius <= highest ? Number(celsius.toFixed(1)) : null;
}

/** Told once a container: a wrong unit stands in every one of its rows. */
function checkLevels({ metadata, readings }: Pick<Facts, 'metadata' | 'readings'>, report: Report): void {
  if (readings === null) return;
  for (const { id, inside, volume } of metadata.draft.containers ?? []) {
    if (inside === undefined || volume === undefined) continue;
    const full = fullDepth({ inside, volume }) * 100;
    const index = readings.rows.findIndex(
      ({ container, level }) =>
        container === id &&
        level !== null &&
        level > mostTimesFull * full &&
        unlikelyReading('level', level) === null,
    );
    if (index === -1) continue;
    const level = readings.rows[index]!.level!;
    const message = say(
      'level is {level} cm, but {volume} stand only {depth} cm deep in {container}; is the level in cm, and are the volume and the inside right?',
      {
        level,
        volume: `${String(volume.value)} ${volume.unit}`,
        depth: Number(full.toPrecision(3)),
        container: id,
      },
    );
    const place = readingPlace(readings, index, 'level');
    report(rule, { file: 'readings.csv', place, found: String(level), message, where: id });
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
