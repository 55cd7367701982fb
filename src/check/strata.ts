import type { Position, Treatment } from '../model/trial.ts';

/** The strata that treatments may be allotted to, coarsest first. */
export const allotments = ['container', 'plot', 'position'] as const;
export type Allotment = (typeof allotments)[number];

/** The unit that a position belongs to in a stratum; a position without a plot is a plot of its own. */
export function unitOf(position: Position, stratum: Allotment): string {
  const { container, plot, row, column } = position;
  if (stratum === 'container') return container;
  return stratum === 'plot' && plot !== null ? plot : `${container} ${String(row)} ${String(column)}`;
}

/** What the treatments of a position are compared by. */
export type KeyOf = (treatment: Treatment) => string;

/** The units of a stratum by number, in the order of the positions. */
interface Units {
  of: Int32Array;
  count: number;
}

const kept = new WeakMap<readonly Position[], Readonly<Record<Allotment, Units>>>();

function number(positions: readonly Position[], nameOf: (position: Position) => string | null): Units {
  const numbers = new Map<string, number>();
  const of = new Int32Array(positions.length);
  let count = 0;
  positions.forEach((position, index) => {
    const name = nameOf(position);
    let unit = name === null ? undefined : numbers.get(name);
    if (unit === undefined) {
      unit = count;
      count += 1;
      if (name !== null) numbers.set(name, unit);
    }
    of[index] = unit;
  });
  return { of, count };
}

/** The units of every stratum, reckoned once for a layout. */
function unitsOf(positions: readonly Position[]): Readonly<Record<Allotment, Units>> {
  const before = kept.get(positions);
  if (before !== undefined) return before;
  const units = {
    container: number(positions, ({ container }) => container),
    plot: number(positions, ({ plot }) => plot),
    position: number(positions, () => null),
  };
  kept.set(positions, units);
  return units;
}

/** How many units a stratum has. */
export function unitCount(positions: readonly Position[], stratum: Allotment): number {
  return unitsOf(positions)[stratum].count;
}

/** The index of the first position whose treatment differs from that of its unit's first position, or -1. */
export function firstVariation(positions: readonly Position[], stratum: Allotment, keyOf: KeyOf): number {
  const { of, count } = unitsOf(positions)[stratum];
  if (count === positions.length) return -1;
  const first = new Array<string | undefined>(count);
  return positions.findIndex(({ treatment }, index) => {
    const unit = of[index]!;
    const key = keyOf(treatment);
    const before = first[unit];
    if (before === undefined) first[unit] = key;
    return before !== undefined && before !== key;
  });
}

/** The coarsest stratum within which treatments never vary; plots of one position each are positions. */
export function coarsestUnit(positions: readonly Position[], keyOf: KeyOf): Allotment {
  const inPlots = unitCount(positions, 'plot') < positions.length;
  const strata = allotments.filter((stratum) => stratum !== 'plot' || inPlots);
  return strata.find((stratum) => firstVariation(positions, stratum, keyOf) === -1) ?? 'position';
}

/** The factors that vary over the positions, the unit of each, and the finest of these. */
export function unitsOfFactors(
  positions: readonly Position[],
  factors: readonly { id: string }[],
): { varied: string[]; units: Allotment[]; unit: Allotment } {
  const varied = factors
    .map(({ id }) => id)
    .filter((id) => new Set(positions.map(({ treatment }) => treatment[id])).size > 1);
  const units = varied.map((id) => coarsestUnit(positions, (treatment) => treatment[id] ?? ''));
  return { varied, units, unit: allotments.findLast((stratum) => units.includes(stratum)) ?? 'position' };
}

/** The treatment of each unit of a stratum. */
export function unitKeys(positions: readonly Position[], stratum: Allotment, keyOf: KeyOf): string[] {
  const { of, count } = unitsOf(positions)[stratum];
  const keys = new Array<string>(count).fill('');
  positions.forEach(({ treatment }, index) => {
    keys[of[index]!] = keyOf(treatment);
  });
  return keys;
}
