import type { HarvestRecord, Position, Trial } from '../model/trial.ts';
import { sum } from '../statistics/sum.ts';
import type { Cut } from './cuts.ts';
import { positionKey } from './position-key.ts';

/**
 * What one plant, or one pot, gave: in the primary variable's unit, g for weights.
 * A value is null where it is unknown (`unknown`) and where it is left out on purpose.
 */
export interface Yield {
  value: number | null;
  /** True where something grew whose weight is not known; the value is then null, never 0. */
  unknown: boolean;
}

/** A plant, or a pot that was weighed whole, over one cut or all. */
export interface PlantYield {
  position: Position;
  /** From 1; null where the pot was weighed whole. */
  plant: number | null;
  /** Dead plants and those without regrowth count as 0. */
  set: Yield;
  /** Dead plants and those without regrowth are left out. */
  harvested: Yield;
}

/** A pot over one cut or all: the sum of its plants. */
export interface PotYield {
  position: Position;
  pot: Yield;
}

const leftOut: Yield = { value: null, unknown: false };
const unknown: Yield = { value: null, unknown: true };
const known = (value: number): Yield => ({ value, unknown: false });

/** The yields of a trial over one cut, or over all cuts with each plant's and pot's cuts summed. */
export interface Yields {
  plants: readonly PlantYield[];
  pots: readonly PotYield[];
}

/** Those of the trial asked for last: the figures and tables of a page ask for the same ones in turn. */
let last: { trial: Trial; byCut: Map<Cut, Yields> } | null = null;

/** The yields read off the harvest: one entry for each plant and for each pot of the layout. */
export function yieldsOf(trial: Trial, cut: Cut): Yields {
  if (last?.trial !== trial) last = { trial, byCut: new Map() };
  const known = last.byCut.get(cut) ?? readYields(trial, cut);
  last.byCut.set(cut, known);
  return known;
}

function readYields(trial: Trial, cut: Cut): Yields {
  const variable = trial.metadata.variables[0]!.id;
  const records = recordsByPosition(trial, cut);
  const plants: PlantYield[] = [];
  const pots: PotYield[] = [];
  for (const position of trial.positions) {
    const ofPot = records.get(positionKey(position)) ?? [];
    const potPlants = plantsOf(position, ofPot, variable);
    plants.push(...potPlants);
    pots.push({ position, pot: potTotal(ofPot, variable, potPlants) });
  }
  return { plants, pots };
}

function recordsByPosition(trial: Trial, cut: Cut): Map<string, HarvestRecord[]> {
  const records = new Map<string, HarvestRecord[]>();
  for (const record of trial.harvest) {
    if (cut !== 'all' && record.cut !== cut) continue;
    const key = positionKey(record);
    const known = records.get(key);
    if (known) known.push(record);
    else records.set(key, [record]);
  }
  return records;
}

function plantsOf(position: Position, records: readonly HarvestRecord[], variable: string): PlantYield[] {
  const byPlant = new Map<number | null, HarvestRecord[]>();
  for (const record of records) {
    // A pot of one plant that was weighed whole is that plant.
    const plant = record.plant ?? (position.plants === 1 ? 1 : null);
    const known = byPlant.get(plant);
    if (known) known.push(record);
    else byPlant.set(plant, [record]);
  }
  return [...byPlant].map(([plant, ofPlant]) => ({
    position,
    plant,
    set: added(ofPlant.map((record) => yieldOfRecord(record, variable, known(0)))),
    harvested: added(ofPlant.map((record) => yieldOfRecord(record, variable, leftOut))),
  }));
}

function yieldOfRecord(record: HarvestRecord, variable: string, ofLost: Yield): Yield {
  if (record.status === 'culled' || record.status === 'not planted') return leftOut;
  if (record.status === 'dead' || record.status === 'no regrowth') return ofLost;
  const value = record.values[variable] ?? null;
  return record.status === 'not weighed' || value === null ? unknown : known(value);
}

/** One unknown part makes the sum unknown; parts left out do not count, and nothing but such is left out. */
function added(parts: readonly Yield[]): Yield {
  if (parts.some((part) => part.unknown)) return unknown;
  const values = parts.flatMap(({ value }) => (value === null ? [] : [value]));
  return values.length === 0 ? leftOut : known(sum(values));
}

/** The sum of the pot's plants; where that is unknown, each cut's pot total if the grower weighed one. */
function potTotal(records: readonly HarvestRecord[], variable: string, plants: readonly PlantYield[]): Yield {
  const ofPlants = added(plants.map((plant) => plant.set));
  if (!ofPlants.unknown) return ofPlants;
  const cuts = [...new Set(records.map((record) => record.cut))];
  return added(
    cuts.map((cut) =>
      potTotalOfCut(
        records.filter((record) => record.cut === cut),
        variable,
      ),
    ),
  );
}

function potTotalOfCut(records: readonly HarvestRecord[], variable: string): Yield {
  const ofPlants = added(records.map((record) => yieldOfRecord(record, variable, known(0))));
  const weighed = records.find((record) => record.potTotal !== null)?.potTotal ?? null;
  return ofPlants.unknown && weighed !== null ? known(weighed) : ofPlants;
}
