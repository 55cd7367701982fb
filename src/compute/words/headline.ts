import type { Findings, Inference, Summary, TreatmentDescription } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';

/** The measure that a trial's finding is told in, with its words. */
export interface Headline {
  measure: Inference['measure'];
  /** "a plant", "a pot". */
  per: string;
  inference: Inference | null;
  summaryOf: (description: TreatmentDescription) => Summary | null;
}

/**
 * A finding is told by the plant where each pot holds one, lost plants counting as nothing, and by the pot
 * elsewhere: pots of several plants share light and solution.
 */
export function headlineOf(trial: Trial, findings: Findings): Headline {
  const single = trial.positions.every((position) => position.plants === 1);
  const byPlant = single && findings.treatments.every(({ per_plant_set }) => per_plant_set !== null);
  const measure = byPlant ? 'per_plant_set' : 'per_pot';
  return {
    measure,
    per: byPlant ? 'a plant' : 'a pot',
    inference: findings.inference.find((entry) => entry.measure === measure && entry.cut === 'all') ?? null,
    summaryOf: (description) => description[measure],
  };
}
