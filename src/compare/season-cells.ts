import type { Seasons } from '../model/generated/seasons.ts';
import type { TrialWithFindings } from '../model/library.ts';
import type { Trial } from '../model/trial.ts';
import { cultivarFactor, type CultivarIdentity } from './cultivar-identity.ts';
import { type OwnMeans, ownMeans, type SeasonMeasure } from './own-means.ts';
import { trialConditions } from './trial-conditions.ts';

/** What one trial brings to a comparison. */
export interface TrialCells {
  trial: Omit<Seasons['trials'][number], 'adjusted_mean'>;
  cells: Seasons['cells'];
  check: string | null;
  /** The trial's own error of one cultivar mean, for the interaction: its variance and degrees of freedom. */
  error: OwnMeans['error'];
}

/** The crop that a trial belongs to: its species, or its common name where none is given. */
export function speciesOf({ metadata }: Trial): string {
  return metadata.crop.species ?? metadata.crop.name;
}

/** A trial's own means of its cultivars by one measure, over all cuts; null where it has none. */
export function cellsOfTrial(
  { trial, findings }: TrialWithFindings,
  measure: SeasonMeasure,
  identity: CultivarIdentity,
): TrialCells | null {
  // Scores are ranks: a mean of them says nothing across trials.
  if (findings === null || trial.metadata.variables[0].kind === 'scored') return null;
  const factor = cultivarFactor(trial);
  const { means, error } = ownMeans(trial, findings, factor, measure);
  if (means.length === 0) return null;
  const check = factor?.check === undefined ? null : identity.of(trial, factor.check);
  const ofCheck = means.find(({ level }) => level !== null && level === factor?.check)?.mean ?? null;
  const cells = means.map(({ level, mean, se, n }) => ({
    cultivar: identity.of(trial, level ?? undefined)!,
    trial: trial.id,
    mean,
    se,
    n,
    percent_of_check: ofCheck === null || ofCheck <= 0 ? null : (100 * mean) / ofCheck,
  }));
  // Two levels that are one cultivar (a name and its synonym) would be two values of one cell.
  const once = cells.filter(
    ({ cultivar }, index) => cells.findIndex((each) => each.cultivar === cultivar) === index,
  );
  if (once.length < cells.length) return null;
  return {
    trial: { ...trialConditions(trial, findings), cultivars: cells.length, replicated: error !== null },
    cells,
    check,
    error,
  };
}
