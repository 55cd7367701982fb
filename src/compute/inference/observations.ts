import type { Inference } from '../../model/findings.ts';
import type { Position } from '../../model/trial.ts';
import type { Yields } from '../yields.ts';

export type Measure = Inference['measure'];

/** One weight that is analysed: a pot, or a plant of a pot. */
export interface Observation {
  position: Position;
  /** In the primary variable's unit, g for weights. */
  value: number;
}

/** The known weights of a measure; those unknown or left out on purpose are not there. */
export function observationsOf(yields: Yields, measure: Measure): Observation[] {
  if (measure === 'per_pot') {
    return yields.pots.flatMap(({ position, pot }) =>
      pot.value === null ? [] : [{ position, value: pot.value }],
    );
  }
  return yields.plants.flatMap(({ position, plant, set, harvested }) => {
    const { value } = measure === 'per_plant_set' ? set : harvested;
    return value === null || plant === null ? [] : [{ position, value }];
  });
}
