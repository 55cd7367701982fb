import type { Inference } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { experimentalUnit, unitOf } from '../experimental-unit.ts';
import type { Observation } from './observations.ts';

/** The experimental unit of each factor, and by level the units that have a weight left. */
export function unitsOfFactors(trial: Trial, observations: readonly Observation[]): Inference['units'] {
  return (trial.metadata.factors ?? []).map((factor) => {
    const unit = experimentalUnit(trial, factor.id);
    const replicates = factor.levels.map(({ id }): [string, number] => {
      const ofLevel = observations.filter(({ position }) => position.treatment[factor.id] === id);
      return [id, new Set(ofLevel.map(({ position }) => unitOf(position, unit))).size];
    });
    return { factor: factor.id, experimental_unit: unit, replicates: Object.fromEntries(replicates) };
  });
}
