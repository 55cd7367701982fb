import type { FactSheet } from './fact-sheet.ts';
import type { Origin } from './gathered.ts';
import type { Cultivar } from './generated/cultivars.ts';
import type { TrialMetadata } from './generated/trial.ts';
import type { Problem } from './problem.ts';

export type { TrialMetadata } from './generated/trial.ts';
export type Factor = NonNullable<TrialMetadata['factors']>[number];
export type Level = Factor['levels'][number];
export type Container = TrialMetadata['containers'][number];
export type Variable = TrialMetadata['variables'][number];
export type Release = NonNullable<TrialMetadata['releases']>[number];

/** Factor id to level id. */
export type Treatment = Readonly<Record<string, string>>;

/** What became of a plant (or of a pot weighed whole) at a cut. */
export type Status = 'weighed' | 'not weighed' | 'dead' | 'no regrowth' | 'culled' | 'not planted';

/** One position of a container's grid that belongs to the trial. */
export interface Position {
  container: string;
  /** From 1. */
  row: number;
  /** From 1. */
  column: number;
  /** The level of every factor of the trial. */
  treatment: Treatment;
  /** From layout.csv, or from the container; null where the trial has no blocks. */
  block: string | null;
  /** Positions that were one experimental unit share a plot name; null where none is given. */
  plot: string | null;
  /** Plants set in the pot. */
  plants: number;
  /** Physical line in layout.csv, null where there is no layout.csv. */
  line: number | null;
}

/** One row of harvest.csv: a plant at a cut, or a pot weighed whole. */
export interface HarvestRecord {
  container: string;
  row: number;
  column: number;
  /** From 1. */
  cut: number;
  /** ISO 8601; the cut's date where the row gives none. */
  date: string | null;
  /** From 1; null where the pot was weighed whole. */
  plant: number | null;
  status: Status;
  /** Each variable's value, weights in g and others in the variable's own unit; null where there is none. */
  values: Readonly<Record<string, number | null>>;
  /** The pot's total in g where the row gives it; null elsewhere. */
  potTotal: number | null;
  remark: string;
  /** Physical line in harvest.csv. */
  line: number;
}

/** One row of readings.csv; null where nothing was read. */
export interface Reading {
  date: string;
  container: string;
  /** cm, before that row's water was added. */
  level: number | null;
  /** L */
  added: number | null;
  /** mS/cm at 25 C */
  ec: number | null;
  ph: number | null;
  /** degrees Celsius */
  temperature: number | null;
  /** L */
  rain: number | null;
  /** L */
  overflow: number | null;
  remark: string;
  line: number;
}

/** An accepted problem or a warning, published beside the trial. */
export interface Query {
  problem: Problem;
  /** The grower's reason where it was accepted, else null. */
  reason: string | null;
}

/** A released version that is frozen in `versions/`. */
export interface EarlierVersion {
  version: string;
  /** As it was then, checked by the rules of today; null where they find an error in it. */
  trial: Trial | null;
}

/** A trial that passed the check: nothing in it contradicts its metadata. */
export interface Trial {
  id: string;
  metadata: TrialMetadata;
  positions: readonly Position[];
  harvest: readonly HarvestRecord[];
  readings: readonly Reading[];
  queries: readonly Query[];
  /** The folder's files by path from the trial's folder on, as given. */
  files: ReadonlyMap<string, Uint8Array>;
  /** The frozen versions before this one, the oldest first; absent where there are none. */
  earlier?: readonly EarlierVersion[];
  /** Its fact sheets, factsheet.mdx first, then those of other languages; absent where there are none. */
  factSheets?: readonly FactSheet[];
  /** Where it was gathered from; absent for the site's own. */
  origin?: Origin;
  /** That site's own list of cultivars, which says what its ids mean; absent for the site's own trials. */
  cultivarsThere?: readonly Cultivar[];
}
