import { say } from '../../model/say.ts';
import type { Position, Trial } from '../../model/trial.ts';
import type { Cut } from '../cuts.ts';
import { positionKey } from '../position-key.ts';
import type { Measure } from '../tables/measures.ts';
import type { PlantYield, Yield, Yields } from '../yields.ts';

/** A value of a plant, pot or container; null with a reason where it did not count. */
export interface ValueOfPlace {
  place: string;
  value: number | null;
  reason: string;
  rows: readonly number[];
}

/** The rows of weights.csv of each position, and of each plant in it. */
export type WeightsRows = ReadonlyMap<string, readonly number[]>;

const plantKey = (place: string, plant: number | null) => `${place} plant ${plant ?? 'all'}`;

/** Finds the rows of weights.csv: one for each row of the harvest in its order, the heading being row 1. */
export function weightsRows(trial: Trial, cut: Cut): WeightsRows {
  const rows = new Map<string, number[]>();
  const single = new Set(trial.positions.filter(({ plants }) => plants === 1).map(positionKey));
  trial.harvest.forEach((record, index) => {
    if (cut !== 'all' && record.cut !== cut) return;
    const place = positionKey(record);
    const plant = record.plant ?? (single.has(place) ? 1 : null);
    for (const key of [place, plantKey(place, plant)]) {
      const known = rows.get(key);
      if (known) known.push(index + 2);
      else rows.set(key, [index + 2]);
    }
  });
  return rows;
}

/** The values of one measure, in the order of the layout. */
export function valuesOf(yields: Yields, measure: Measure, rows: WeightsRows): ValueOfPlace[] {
  if (measure === 'per_pot') {
    return yields.pots.map(({ position, pot }) =>
      ofPlace(positionKey(position), pot, rows, positionKey(position)),
    );
  }
  if (measure === 'per_container') return ofContainers(yields, rows);
  const of = measure === 'per_plant_set' ? 'set' : 'harvested';
  return yields.plants
    .filter(({ plant }) => plant !== null)
    .map((each) => ofPlace(nameOf(each), each[of], rows, plantKey(positionKey(each.position), each.plant)));
}

function nameOf({ position, plant }: PlantYield): string {
  return position.plants === 1
    ? positionKey(position)
    : `${positionKey(position)} ${say('plant {plant}', { plant: String(plant) })}`;
}

function ofPlace(place: string, { value, unknown }: Yield, rows: WeightsRows, key: string): ValueOfPlace {
  return {
    place,
    value,
    reason: unknown ? say('weight unknown') : value === null ? say('not counted by its status') : '',
    rows: rows.get(key) ?? [],
  };
}

function ofContainers(yields: Yields, rows: WeightsRows): ValueOfPlace[] {
  const byContainer = Map.groupBy(yields.pots, ({ position }) => position.container);
  return [...byContainer].map(([place, pots]) => {
    const unknown = pots.some(({ pot }) => pot.unknown);
    const values = pots.flatMap(({ pot }) => (pot.value === null ? [] : [pot.value]));
    return {
      place,
      value: unknown || values.length === 0 ? null : values.reduce((total, value) => total + value, 0),
      reason: unknown ? say('a pot of unknown weight') : say('nothing counted in it'),
      rows: pots.flatMap(({ position }: { position: Position }) => rows.get(positionKey(position)) ?? []),
    };
  });
}
