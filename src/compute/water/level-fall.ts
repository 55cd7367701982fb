import type { Container, Reading } from '../../model/trial.ts';
import { sum } from '../../statistics/sum.ts';
import { squareMetres } from '../growing-area.ts';

/** What happened to a container's water between two readings of its level. */
export interface LevelFall {
  /** ISO 8601. */
  first: string;
  last: string;
  /** L, the inside area x the fall of the level; negative where it rose. */
  fallen: number;
  /** L added after the first level was read and before the last was. */
  added: number;
  /** L that rained in and ran over after the first level was read, up to the last. */
  rain: number;
  overflow: number;
  /** L added after the last level was read. */
  addedSince: number;
  /** L: fallen + added + rain - overflow. */
  used: number;
}

/** Readings in the order of their days; of one day, in the order of their lines. */
export function inOrder(readings: readonly Reading[]): Reading[] {
  return [...readings].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.line - b.line));
}

/** Litres in 1 cm over the container's inside: 1 cm over 1 m2 is 10 L. Null where no inside is given. */
export function litresInCentimetre({ inside }: Container): number | null {
  return inside ? squareMetres(inside) * 10 : null;
}

/**
 * From one reading of the level to another. A row's water was added after its level was read, its rain fell and
 * its overflow ran before.
 *
 * @param readings one container's, in order
 * @param levels how many of the last levels to reckon from; all where absent
 * @param litres litres in 1 cm of level
 * @returns null where fewer than two levels were read
 */
export function levelFall(readings: readonly Reading[], litres: number, levels?: number): LevelFall | null {
  const read = readings.filter(({ level }) => level !== null).slice(levels === undefined ? 0 : -levels);
  const [start, end] = [read[0], read.at(-1)];
  if (read.length < 2 || !start || !end) return null;
  const [first, last] = [readings.indexOf(start), readings.indexOf(end)];
  const total = (rows: readonly Reading[], key: 'added' | 'rain' | 'overflow') =>
    sum(rows.map((reading) => reading[key] ?? 0));
  const fallen = litres * (start.level! - end.level!);
  const added = total(readings.slice(first, last), 'added');
  const rain = total(readings.slice(first + 1, last + 1), 'rain');
  const overflow = total(readings.slice(first + 1, last + 1), 'overflow');
  return {
    first: start.date,
    last: end.date,
    fallen,
    added,
    rain,
    overflow,
    addedSince: total(readings.slice(last), 'added'),
    used: fallen + added + rain - overflow,
  };
}
