import { say } from '../model/say.ts';
import type { HarvestRecord, Position, Variable } from '../model/trial.ts';
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

/** Weights of the same treatment at the same cut. */
export interface Fellows {
  /** `cultivar slate-egret at cut 1`, in every language, as `accepted.where` names them. */
  name: string;
  /** The same in the language being written. */
  inWords(): string;
  members: readonly Weighing[];
  /** The middle weight, the upper one of two; 0 where there are fewer than four. */
  usual: number;
}

/** The weights of a trial, all in the file's order and by their fellows. */
export interface Weighings {
  variable: Variable;
  harvest: Harvest;
  all: readonly Weighing[];
  fellows: readonly Fellows[];
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
  const groups = new Map<string, Map<number, Weighing[]>>();
  const positionOf = (index: number): Planted => layout.positions[harvest.positionOf[index] ?? -1] ?? nowhere;
  harvest.records.forEach((record, index) => {
    const weight = record.values[variable.id];
    if (record.status !== 'weighed' || weight === null || weight === undefined || weight <= 0) return;
    const weighing = { index, record, weight };
    all.push(weighing);
    groupOf(groups, fellowsName(positionOf(index), record.plant), record.cut).push(weighing);
  });
  const fellows = [...groups].flatMap(([treatment, cuts]) =>
    [...cuts].map(([cut, members]): Fellows => {
      const name = `${treatment} at cut ${String(cut)}`.trim();
      const { index, record } = members[0]!;
      return {
        name,
        inWords: () => fellowsInWords(positionOf(index), record),
        members,
        usual: usualOf(members.map(({ weight }) => weight)),
      };
    }),
  );
  return { variable, harvest, all, fellows };
}

type Planted = Pick<Position, 'treatment' | 'plants'>;

const nowhere: Planted = { treatment: {}, plants: 1 };

/** A text that is the same for plants of one treatment, and for whole pots of one treatment and count of plants. */
export function fellowsName({ treatment, plants }: Planted, plant: number | null): string {
  const words = treatmentInWords(treatment);
  return plants > 1 ? `${words}, ${plant === null ? 'pots' : 'plants in pots'} of ${String(plants)}` : words;
}

function fellowsInWords({ treatment, plants }: Planted, { plant, cut }: HarvestRecord): string {
  const alone = treatmentInWords(treatment);
  const inPots =
    plant === null
      ? say('{treatment}, pots of {plants}', { treatment: alone, plants })
      : say('{treatment}, plants in pots of {plants}', { treatment: alone, plants });
  const words = plants > 1 ? inPots : alone;
  return say('{treatment} at cut {cut}', { treatment: words, cut }).trim();
}

/** The list of a group and a number, made where there is none yet. */
export function groupOf<Item>(
  groups: Map<string, Map<number, Item[]>>,
  name: string,
  number: number,
): Item[] {
  let lists = groups.get(name);
  if (lists === undefined) groups.set(name, (lists = new Map<number, Item[]>()));
  let list = lists.get(number);
  if (list === undefined) lists.set(number, (list = []));
  return list;
}

/** How many fellows must be there to tell what is usual. */
const fewestFellows = 4;

/** The middle weight, the upper one of two; 0 where there are fewer than four. */
export function usualOf(weights: readonly number[]): number {
  if (weights.length < fewestFellows) return 0;
  // A scale gives few different weights: those are put in order, and not every plant.
  const counts = countsOf(weights);
  let passed = 0;
  for (const weight of new Float64Array(counts.keys()).sort()) {
    passed += counts.get(weight)!;
    if (passed > Math.floor(weights.length / 2)) return weight;
  }
  return 0;
}

function countsOf(weights: readonly number[]): Map<number, number> {
  const counts = new Map<number, number>();
  for (const weight of weights) counts.set(weight, (counts.get(weight) ?? 0) + 1);
  return counts;
}

const ties = new WeakMap<readonly Weighing[], number>();

/** The chance that two weights drawn from these are alike, reckoned once for a list. */
export function chanceOfTie(all: readonly Weighing[]): number {
  const before = ties.get(all);
  if (before !== undefined) return before;
  const chance = tieAmong(all);
  ties.set(all, chance);
  return chance;
}

function tieAmong(all: readonly Weighing[]): number {
  const counts = countsOf(all.map(({ weight }) => weight));
  const pairs = all.length * (all.length - 1);
  let alike = 0;
  for (const count of counts.values()) alike += count * (count - 1);
  return pairs === 0 ? 1 : alike / pairs;
}
