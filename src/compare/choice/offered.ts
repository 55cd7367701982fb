import type { SeasonGroup } from '../season-groups.ts';
import { type Condition, conditions, seasonParts } from './conditions.ts';

/** A value that can be chosen, and how many trials have it. */
export interface OfferedValue {
  value: string;
  trials: number;
}

/** What there is to choose from in a crop and measure. */
export interface Offered {
  /** In the order in which they first stood in a trial. */
  cultivars: OfferedValue[];
  /** Ascending. */
  years: number[];
  /** Times of the year. */
  seasons: OfferedValue[];
  settings: OfferedValue[];
  /** Only those in which the trials differ. */
  conditions: { condition: Condition; values: OfferedValue[] }[];
  trials: number;
  replicated: number;
}

/** What a reader can choose from: what all trials have alike is no choice. */
export function offered({ parts }: SeasonGroup): Offered {
  const trials = parts.map(({ trial }) => trial);
  const years = trials.flatMap((trial) => seasonParts(trial).year ?? []);
  return {
    cultivars: counted(parts.flatMap(({ cells }) => cells.map(({ cultivar }) => cultivar))),
    years: [...new Set(years)].sort((a, b) => a - b),
    seasons: counted(trials.map((trial) => seasonParts(trial).time)),
    settings: counted(trials.map(({ setting }) => setting)),
    conditions: conditions.flatMap((condition) => {
      const values = counted(trials.map(condition.of)).sort(inOrder);
      return values.length < 2 ? [] : [{ condition, values }];
    }),
    trials: trials.length,
    replicated: trials.filter(({ replicated }) => replicated).length,
  };
}

function counted(values: readonly string[]): OfferedValue[] {
  const counts = new Map<string, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].map(([value, trials]) => ({ value, trials }));
}

/** Numbers and bands by their size, words by their letters. */
function inOrder({ value: a }: OfferedValue, { value: b }: OfferedValue): number {
  return a.localeCompare(b, 'en', { numeric: true });
}
