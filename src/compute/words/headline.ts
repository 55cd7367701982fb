import { say } from '../../model/say.ts';
import type { Findings, Inference, Summary, TreatmentDescription } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { headlineMeasure } from '../headline-measure.ts';

/** The measure that a trial's finding is told in, with its words. */
export interface Headline {
  measure: Inference['measure'];
  /** "a plant", "a pot". */
  per: string;
  inference: Inference | null;
  summaryOf: (description: TreatmentDescription) => Summary | null;
}

/** The headline measure of a trial, with its analysis over all cuts. */
export function headlineOf(trial: Trial, findings: Findings): Headline {
  const measure = headlineMeasure(trial);
  return {
    measure,
    per: measure === 'per_plant_set' ? say('a plant') : say('a pot'),
    inference: findings.inference.find((entry) => entry.measure === measure && entry.cut === 'all') ?? null,
    summaryOf: (description) => description[measure],
  };
}
