import { say } from '../../model/say.ts';
import type { Facts, Readings } from '../facts.ts';
import { readingPlace } from '../places.ts';
import type { Report, Rule } from '../rule.ts';
import { unlikelyReading } from './reading-unlikely.ts';

const rule: Rule = {
  rule: 'reading-apart',
  severity: 'warning',
  acceptable: true,
  title: 'Reading with its decimal mark elsewhere',
  meaning:
    'A reading lies far from all others of its column, and among them once its decimal mark is moved; or a zero stands where nothing was read.',
  example: 'ec is 0.17, while the others lie from 1.6 to 1.8; was it 1.7?',
  check,
};
export default rule;

/** With fewer other readings nothing can be said of one. */
const fewest = 5;
/** At each end of a column this share is let go by, so that one slip does not hide another. */
const trimmed = 0.1;
/** So much beyond the others may a reading lie once its mark is moved. */
const slack = 1.25;
/** Below this no reading of another day lies, where a zero is a surprise: mS/cm and degrees Celsius. */
const leastBesideZero = { ec: 0.2, temperature: 5 } as const;

type Name = keyof typeof leastBesideZero;

function check({ readings }: Facts, report: Report): void {
  if (readings === null) return;
  for (const name of ['ec', 'temperature'] as const) checkColumn(name, readings, report);
}

function checkColumn(name: Name, readings: Readings, report: Report): void {
  const read = [...readings.rows.entries()].filter(([, reading]) => reading[name] !== null);
  if (read.length <= fewest) return;
  const inOrder = read.map(([, reading]) => reading[name]!).sort((a, b) => a - b);
  const cut = Math.max(1, Math.floor(read.length * trimmed));
  const [lowest, highest] = [inOrder[cut]!, inOrder[read.length - 1 - cut]!];
  for (const [index, reading] of read) {
    const value = reading[name]!;
    const perhaps = whatItWas(name, value, lowest, highest);
    if (perhaps === null || unlikelyReading(name, value) !== null) continue;
    // A container whose readings are all of that kind holds another solution.
    const others = read.filter(([at, { container }]) => at !== index && container === reading.container);
    if (others.some(([, other]) => isAsFar(other[name]!, lowest, highest))) continue;
    const values = { name, value, lowest, highest, perhaps };
    const message =
      value === 0
        ? say(
            '{name} is 0, while the others lie from {lowest} to {highest}; leave the cell empty where nothing was read',
            values,
          )
        : say(
            '{name} is {value}, while the others lie from {lowest} to {highest}; was it {perhaps}?',
            values,
          );
    const place = readingPlace(readings, index, name);
    report(rule, { file: 'readings.csv', place, found: String(value), message, where: reading.container });
  }
}

const isAsFar = (value: number, lowest: number, highest: number): boolean =>
  value * 2 < lowest || value > highest * 2;

/** What a reading was before its mark slipped, 0 for a zero that stands for nothing; null where it is no surprise. */
function whatItWas(name: Name, value: number, lowest: number, highest: number): number | null {
  if (value === 0) return lowest >= leastBesideZero[name] ? 0 : null;
  if (lowest <= 0 || !isAsFar(value, lowest, highest)) return null;
  const moved = [10, 100, 0.1, 0.01].map((by) => Number((value * by).toPrecision(6)));
  return moved.find((one) => one * slack >= lowest && one <= highest * slack) ?? null;
}
