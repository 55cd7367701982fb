import { say } from '../../model/say.ts';
import { litresIn } from '../../model/units.ts';
import type { Container } from '../../model/trial.ts';
import type { Facts, Readings } from '../facts.ts';
import { containersInOne } from '../containers-in-one.ts';
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
/** A container that was never filled to this part of its volume has another volume, or levels in another unit. */
const fewestTimes = 5;

/** From this many readings on, and this share of a column, what lies outside is one slip of the whole column. */
const several = 3;
const ofColumn = 0.25;

type Name = keyof typeof bounds;

function check({ metadata, readings }: Facts, report: Report): void {
  if (readings === null) return;
  checkLevels({ metadata, readings }, report);
  checkAmounts(metadata.draft.containers ?? [], readings, report);
  for (const name of Object.keys(bounds) as Name[]) checkColumn(name, readings, report);
}

function checkColumn(name: Name, readings: Readings, report: Report): void {
  const there = readings.rows.filter((reading) => reading[name] !== null).length;
  const outside = [...readings.rows.keys()].filter((index) => {
    const value = readings.rows[index]![name];
    return value !== null && unlikelyReading(name, value) !== null;
  });
  const isWhole = outside.length >= several && outside.length >= there * ofColumn;
  for (const index of isWhole ? outside.slice(0, 1) : outside) {
    const reading = readings.rows[index]!;
    const value = reading[name]!;
    const message = isWhole
      ? wholeColumn(name, value, { outside: outside.length, there })
      : oneReading(name, value);
    const place = readingPlace(readings, index, name);
    const where = isWhole ? null : reading.container;
    report(rule, { file: 'readings.csv', place, found: String(value), message, where });
  }
}

/** Told in the place of all readings that are unlikely because two headings changed places. */
export function reportExchangedReadings(
  report: Report,
  line: number,
  [one, other]: readonly [string, string],
): void {
  const message = say(
    'the readings beneath {one} and {other} are unlikely as they stand, and none is with the two headings exchanged; exchange them',
    { one, other },
  );
  report(rule, { file: 'readings.csv', place: { line, column: 1 }, found: `${one}, ${other}`, message });
}

function oneReading(name: Name, value: number): string {
  const [lowest, highest] = bounds[name];
  const values = { name, value, lowest, highest };
  const perhaps = unlikelyReading(name, value)?.perhaps ?? null;
  const celsius = name === 'temperature' ? fromFahrenheit(value) : null;
  if (celsius !== null)
    return say('{name} is {value}, outside {lowest} to {highest}; is it in °F? Then write {celsius}', {
      ...values,
      celsius,
    });
  return perhaps === null
    ? say('{name} is {value}, outside {lowest} to {highest}', values)
    : say('{name} is {value}, outside {lowest} to {highest}; was it {perhaps}?', { ...values, perhaps });
}

/** Told once of a column: it was read or typed in another unit, or lost its decimal marks. */
function wholeColumn(name: Name, value: number, counts: { outside: number; there: number }): string {
  const [lowest, highest] = bounds[name];
  const values = { name, value, lowest, highest, ...counts };
  const inOther = inOtherUnit(name, value);
  if (inOther !== null)
    return say(
      '{outside} of {there} readings of {name} lie outside {lowest} to {highest}, the first of them {value}; are they in {unit}? Then write {perhaps} in its place, in {own}',
      { ...values, ...inOther },
    );
  const perhaps = unlikelyReading(name, value)?.perhaps ?? null;
  return perhaps === null
    ? say(
        '{outside} of {there} readings of {name} lie outside {lowest} to {highest}, the first of them {value}; is the unit right, and is it the right column?',
        values,
      )
    : say(
        '{outside} of {there} readings of {name} lie outside {lowest} to {highest}, the first of them {value}; was it {perhaps}? Then put the decimal mark back in all of them',
        { ...values, perhaps },
      );
}

/** The other unit in which a value that is too high makes a likely reading, and what it is in our own. */
function inOtherUnit(name: Name, value: number): { unit: string; own: string; perhaps: number } | null {
  const isLikely = (one: number): boolean => unlikelyReading(name, one) === null;
  if (name === 'temperature') {
    const celsius = fromFahrenheit(value);
    return celsius === null ? null : { unit: '°F', own: '°C', perhaps: celsius };
  }
  if (name === 'ec' && value >= 100 && isLikely(value / 1000))
    return { unit: 'µS/cm', own: 'mS/cm', perhaps: Number((value / 1000).toPrecision(4)) };
  if (name === 'level' && isLikely(value / 10))
    return { unit: 'mm', own: 'cm', perhaps: Number((value / 10).toPrecision(4)) };
  return null;
}

/** A water temperature in degrees C of what was read in F; null where none comes out of it. */
function fromFahrenheit(value: number): number | null {
  const celsius = ((value - 32) * 5) / 9;
  const [, highest] = bounds.temperature;
  return value > highest && celsius <= highest ? Number(celsius.toFixed(1)) : null;
}

/** Told once: a wrong unit stands in every row, and mostly of every container. */
function checkLevels(
  { metadata, readings }: { metadata: Facts['metadata']; readings: Readings },
  report: Report,
): void {
  const byContainer = Map.groupBy(readings.rows.keys(), (index) => readings.rows[index]!.container);
  const odd = (metadata.draft.containers ?? []).flatMap((container) =>
    oddLevel(container, readings, byContainer.get(container.id) ?? []),
  );
  const found = odd.map(({ index, container, volume, depth, isHigh }) => {
    const level = readings.rows[index]!.level!;
    const values = { level, volume: `${String(volume.value)} ${volume.unit}`, depth, container };
    const message = isHigh
      ? say(
          'level is {level} cm, but {volume} stand only {depth} cm deep in {container}; is the level in cm, and are the volume and the inside right?',
          values,
        )
      : say(
          'level is never above {level} cm, but {volume} stand {depth} cm deep in {container}; is the level in cm, and are the volume and the inside right?',
          values,
        );
    const place = readingPlace(readings, index, 'level');
    return { file: 'readings.csv', place, found: String(level), message, where: container };
  });
  for (const finding of containersInOne(found)) report(rule, finding);
}

/** The highest level of a container where the volume said of it stands far lower or far higher; none where it does not. */
function oddLevel({ id, inside, volume }: Container, { rows }: Readings, own: readonly number[]) {
  if (inside === undefined || volume === undefined) return [];
  const full = fullDepth({ inside, volume }) * 100;
  const levels = own
    .map((index) => [index, rows[index]!.level] as const)
    .filter(([, level]) => level !== null && unlikelyReading('level', level) === null);
  const isHigh = ([, level]: (typeof levels)[number]): boolean => level! > mostTimesFull * full;
  const high = levels.find(isHigh);
  const highest = levels.toSorted(([, a], [, b]) => b! - a!)[0];
  const isLow = levels.length >= several && highest !== undefined && highest[1]! * fewestTimes < full;
  const found = high ?? (isLow ? highest : undefined);
  if (found === undefined) return [];
  const depth = Number(full.toPrecision(3));
  return [{ index: found[0], container: id, volume, depth, isHigh: high !== undefined }];
}

/** Told once a column: more water than the container holds went in at one reading. */
function checkAmounts(containers: readonly Container[], readings: Readings, report: Report): void {
  for (const name of ['added', 'rain', 'overflow'] as const) {
    const holds = new Map(
      containers.map(({ id, volume }) => [id, volume && volume.value * (litresIn[volume.unit] ?? 1)]),
    );
    const odd = [...readings.rows.entries()].filter(
      ([, reading]) => (reading[name] ?? 0) > mostTimesFull * (holds.get(reading.container) ?? Infinity),
    );
    const [first] = odd;
    if (first === undefined) continue;
    const [index, reading] = first;
    const message = say(
      '{name} is {value} L, but {container} holds {volume} L; is it in L? (readings like it: {count})',
      {
        name,
        value: reading[name]!,
        container: reading.container,
        volume: Number((holds.get(reading.container) ?? 0).toPrecision(3)),
        count: odd.length,
      },
    );
    const place = readingPlace(readings, index, name);
    const where = odd.length === 1 ? reading.container : null;
    report(rule, { file: 'readings.csv', place, found: String(reading[name]), message, where });
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
