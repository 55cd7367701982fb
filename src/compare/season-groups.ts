import type { Seasons } from '../model/generated/seasons.ts';
import type { Cultivar, TrialWithFindings } from '../model/library.ts';
import { cultivarIdentity } from './cultivar-identity.ts';
import type { SeasonMeasure } from './own-means.ts';
import { cellsOfTrial, speciesOf, type TrialCells } from './season-cells.ts';

const measures: readonly SeasonMeasure[] = ['per_pot', 'per_plant_set', 'kg_per_m2'];

/** A crop and measure with what each trial brings: all that a comparison needs, and plain data. */
export interface SeasonGroup extends Pick<Seasons, 'species' | 'measure' | 'unit'> {
  /** The oldest first. */
  parts: TrialCells[];
}

/** What the trials bring, by crop, unit and measure. A unit is never mixed with another. */
export function seasonGroups(
  trials: readonly TrialWithFindings[],
  known: readonly Cultivar[] = [],
): SeasonGroup[] {
  const identity = cultivarIdentity(trials, known);
  const finished = oldestFirst(trials).filter(({ findings }) => findings !== null);
  const groups = Map.groupBy(finished, ({ trial, findings }) =>
    JSON.stringify([speciesOf(trial), findings!.variable.unit]),
  );
  return [...groups].flatMap(([key, items]) => {
    const [species, own] = JSON.parse(key) as [string, string];
    return measures.flatMap((measure): SeasonGroup[] => {
      const parts = items.flatMap((item) => cellsOfTrial(item, measure, identity) ?? []);
      const unit = measure === 'kg_per_m2' ? 'kg/m2' : own;
      return parts.length === 0 ? [] : [{ species, measure, unit, parts }];
    });
  });
}

function oldestFirst(trials: readonly TrialWithFindings[]): TrialWithFindings[] {
  const day = ({ trial }: TrialWithFindings) =>
    trial.metadata.dates?.cuts?.at(-1) ?? String(trial.metadata.season.year);
  const key = (item: TrialWithFindings) => `${day(item)} ${item.trial.id}`;
  return [...trials].sort((a, b) => (key(a) < key(b) ? -1 : 1));
}
