import type { HarvestRecord, Variable } from '../model/trial.ts';
import type { Facts, Harvest } from './facts.ts';
import { weighedVariable } from './totals.ts';
import { treatmentInWords } from './treatment-words.ts';

/** One weight of the primary variable, with where it came from. */
export interface Weighing {
  /** Index of its record. */
  index: number;
  record: HarvestRecord;
  /** g */
  weight: number;
}

/** The weights of a trial, all and by their fellows: those of the same treatment at the same cut. */
export interface Weighings {
  variable: Variable;
  harvest: Harvest;
  all: readonly Weighing[];
  byFellows: ReadonlyMap<string, readonly Weighing[]>;
}

const kept = new WeakMap<Facts, Weighings | null>();

/** The weights of the primary variable; null where that is no weight or there is no harvest. */
export function weighingsOf(facts: Facts): Weighings | null {
  const before = kept.get(facts);
  if (before !== undefined) return before;
  const found = collect(facts);
  kept.set(facts, found);
  return found;
}

function collect({ metadata, harvest, layout }: Facts): Weighings | null {
  const variable = weighedVariable(metadata.draft.variables);
  if (variable === null || harvest === null || layout === null) return null;
  const all: Weighing[] = [];
  const byFellows = new Map<string, Weighing[]>();
  harvest.records.forEach((record, index) => {
    const weight = record.values[variable.id];
    if (record.status !== 'weighed' || weight === null || weight === undefined || weight <= 0) return;
    const weighing = { index, record, weight };
    all.push(weighing);
    const treatment = layout.positions[harvest.positionOf[index] ?? -1]?.treatment ?? {};
    const key = `${treatmentInWords(treatment)} at cut ${String(record.cut)}`;
    const fellows = byFellows.get(key);
    if (fellows === undefined) byFellows.set(key, [weighing]);
    else fellows.push(weighing);
  });
  return { variable, harvest, all, byFellows };
}

/** The middle of a list of numbers, the upper one of two; NaN-free for lists that are not empty. */
export function middle(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/** The chance that two weights drawn from these are alike. */
export function chanceOfTie(weights: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const weight of weights) counts.set(weight, (counts.get(weight) ?? 0) + 1);
  const pairs = weights.length * (weights.length - 1);
  let ties = 0;
  for (const count of counts.values()) ties += count * (count - 1);
  return pairs === 0 ? 1 : ties / pairs;
}
