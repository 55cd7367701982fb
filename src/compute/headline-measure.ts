import type { Inference } from '../model/findings.ts';
import type { Trial } from '../model/trial.ts';

/**
 * The measure that a trial's finding is told in: by the plant where each pot holds one, lost plants counting
 * as nothing, and by the pot elsewhere (plants of a pot share light and solution) and where pots are what was measured.
 */
export function headlineMeasure(trial: Trial): Inference['measure'] {
  const ofPots = trial.metadata.variables[0]!.of === 'pot';
  const single = trial.positions.every((position) => position.plants === 1);
  return single && !ofPots ? 'per_plant_set' : 'per_pot';
}
