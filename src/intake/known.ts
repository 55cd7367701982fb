import type { Factor, Level, TrialMetadata } from '../model/trial.ts';
import { isWeight } from '../model/units.ts';

/** What is known of the trial that a spreadsheet is brought into: all of trial.yaml that a table's reading asks for. */
export interface KnownTrial {
  factors: readonly Factor[];
  containers: readonly { id: string; rows: number; columns: number }[];
  variables: readonly { id: string; name: string; unit: string }[];
  /** Days of the cuts, year-month-day. */
  cuts: readonly string[];
}

/** What a table is read for where there is no trial yet: a weight of every plant. */
export const newTrial: KnownTrial = {
  factors: [{ id: 'cultivar', name: 'Cultivar', kind: 'cultivar', levels: [] as unknown as [Level, Level] }],
  containers: [],
  variables: [{ id: 'fresh_weight', name: 'Fresh weight', unit: 'g' }],
  cuts: [],
};

/** The same from a trial's own metadata. */
export function knownTrial({ factors, containers, variables, dates }: TrialMetadata): KnownTrial {
  return {
    factors: factors ?? [],
    containers,
    variables: variables.map(({ id, name, unit = '' }) => ({ id, name, unit })),
    cuts: dates?.cuts ?? [],
  };
}

/** The variable that a column of weights without a name of its own is: the first one weighed. */
export const weighedVariable = ({ variables }: KnownTrial): string | null =>
  variables.find(({ unit }) => isWeight(unit))?.id ?? null;
