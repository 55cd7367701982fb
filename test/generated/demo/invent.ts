/**
 * Invents weights and water readings for a trial whose layout is known. Deviates are centred and stretched
 * so that the demo has the means and spreads that its lesson needs: these are made numbers, not measurements.
 */
import { centredWithin, normal, scaledTo, type Chance } from './draw.ts';

/** One experimental unit: its treatment, its block, and the positions that make it up. */
export interface Unit {
  container: string;
  block: string;
  level: string;
  positions: { row: number; column: number }[];
}

export interface Spread {
  /** coefficient of variation between blocks, as a fraction */
  blocks: number;
  /** of unit means about treatment and block */
  units: number;
  /** of plants within a unit */
  plants: number;
  /** relative rise in weight from one row to the next, about the middle row */
  perRow?: number;
}

export interface Weight {
  container: string;
  row: number;
  column: number;
  level: string;
  /** grams, a multiple of the scale's step */
  grams: number;
  /** the plant's own relative deviate, carried to a second cut */
  deviate: number;
}

const distinct = (names: string[]): string[] => [...new Set(names)];

function unitDeviates(units: Unit[], spread: Spread, next: Chance): number[] {
  const levels = units.map((unit) => unit.level);
  const blocks = units.map((unit) => unit.block);
  const drawn = units.map(() => normal(next));
  const swept = centredWithin(centredWithin(drawn, levels), blocks);
  const freedom = units.length - distinct(levels).length - distinct(blocks).length + 1;
  return freedom > 0 ? scaledTo(spread.units, swept, freedom) : units.map(() => 0);
}

function blockDeviates(units: Unit[], spread: Spread, next: Chance): Map<string, number> {
  const blocks = distinct(units.map((unit) => unit.block));
  const drawn = centredWithin(
    blocks.map(() => normal(next)),
    blocks.map(() => 'all'),
  );
  const scaled = scaledTo(spread.blocks, drawn, Math.max(1, blocks.length - 1));
  return new Map(blocks.map((block, index) => [block, scaled[index]!]));
}

/**
 * @param means grams a plant (or a pot weighed whole) for each level
 * @param step the scale's resolution in g
 * @param before the weights of an earlier cut in the same order: half of a plant's vigour is carried over
 */
export function weights(
  units: Unit[],
  means: Record<string, number>,
  spread: Spread,
  step: number,
  next: Chance,
  before?: Weight[],
): Weight[] {
  const blocks = blockDeviates(units, spread, next);
  const ofUnit = unitDeviates(units, spread, next);
  const places = units.flatMap((unit, index) =>
    unit.positions.map((position) => ({ unit, index, position })),
  );
  const drawn = places.map(
    (_, index) => normal(next) + (before ? 0.5 * (before[index]!.deviate / spread.plants) : 0),
  );
  const names = places.map((place) => String(place.index));
  const freedom = Math.max(1, places.length - units.length);
  const ofPlant = scaledTo(spread.plants, centredWithin(drawn, names), freedom);
  return places.map(({ unit, index, position }, place) => {
    const middle = (1 + Math.max(...unit.positions.map((each) => each.row))) / 2;
    const gradient = (spread.perRow ?? 0) * (position.row - middle);
    const expected = means[unit.level]! * (1 + blocks.get(unit.block)! + ofUnit[index]!);
    const grams = expected * (1 + gradient + ofPlant[place]!);
    const rounded = Math.round(grams / step) * step;
    return {
      container: unit.container,
      ...position,
      level: unit.level,
      grams: rounded,
      deviate: ofPlant[place]!,
    };
  });
}

/** A container's water: what is read on each day of a walk round the tanks. */
export interface Water {
  container: string;
  days: string[];
  /** cm on the first day */
  level: number;
  /** area that the level falls over, cm2 */
  area: number;
  /** litres drunk and lost by the last day, slowly at first and faster as the leaves close */
  drunk: number;
  /** litres put in, or fallen in, by day; rain falls before that day's reading, water is added after it */
  added?: Record<string, number>;
  rain?: Record<string, number>;
  /** mS/cm on the first and last day, pH likewise, and the water's temperature each day in C */
  ec: [number, number];
  ph: [number, number];
  temperature: number[];
}

/** Rows `date,container,level,added,ec,ph,temperature,rain`, numbers already rounded as they were read. */
export function readings(water: Water, next: Chance): string[][] {
  const times = water.days.map((day) => Date.parse(day));
  const span = times.at(-1)! - times[0]!;
  let gained = 0;
  return water.days.map((day, index) => {
    const fraction = (times[index]! - times[0]!) / span;
    const rain = water.rain?.[day];
    gained += rain ?? 0;
    const level = water.level + (1000 * (gained - water.drunk * fraction ** 1.7)) / water.area;
    const added = water.added?.[day];
    gained += added ?? 0;
    const between = ([from, to]: [number, number]): number => from + (to - from) * fraction;
    const ec = between(water.ec) + 0.03 * normal(next);
    const ph = between(water.ph) + 0.08 * normal(next);
    const temperature = water.temperature[index]! + 0.4 * normal(next);
    return [
      day,
      water.container,
      level.toFixed(1),
      added === undefined ? '' : String(added),
      ec.toFixed(2),
      ph.toFixed(1),
      (Math.round(2 * temperature) / 2).toFixed(1),
      rain === undefined ? '' : String(rain),
    ];
  });
}
