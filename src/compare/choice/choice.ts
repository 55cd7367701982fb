import type { ConditionKey } from './conditions.ts';

/** How the rows of a figure are sorted within a linked set. */
export type RowOrder = 'mean' | 'name' | 'trials';

/** What a reader chose to compare, and how. */
export interface Choice {
  /** The crop, by the address of its page. */
  crop: string;
  /** As an address has it: "per-pot". */
  measure: string;
  /** The cultivars that take part; all where null, so that one published later takes part too. */
  cultivars: readonly string[] | null;
  /** The first and the last year; null where there is no bound. */
  from: number | null;
  to: number | null;
  /** Times of the year, such as "autumn"; all where null. */
  seasons: readonly string[] | null;
  /** What stood over the containers; all where null. */
  settings: readonly string[] | null;
  /** What is held fixed: trials that differ from it are left out. */
  held: Readonly<Partial<Record<ConditionKey, string>>>;
  onlyReplicated: boolean;
  /** The trials as a sample of others that might have been, not as they were. */
  asSample: boolean;
  /** Each mean by its trial's own standard error. */
  weighted: boolean;
  order: RowOrder;
  /** The differences shown: every pair, those against one cultivar, or (null) what suits how many there are. */
  against: 'pairs' | { cultivar: string } | null;
  /** Every row and column, also where there are more than can be looked over. */
  everything: boolean;
}

/** All trials of a crop by a measure, as its page without a script has it. */
export function wholeChoice(crop: string, measure: string): Choice {
  return {
    crop,
    measure,
    cultivars: null,
    from: null,
    to: null,
    seasons: null,
    settings: null,
    held: {},
    onlyReplicated: false,
    asSample: false,
    weighted: false,
    order: 'mean',
    against: null,
    everything: false,
  };
}
