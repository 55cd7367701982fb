import type { Trial } from '../../model/trial.ts';
import type { Stratum } from '../../statistics/linear-model/strata-rotation.ts';
import { strataOf, type UnitStratum, unitOf } from '../experimental-unit.ts';
import { groupCount, groupIndexes } from './grouping.ts';
import type { Observation } from './observations.ts';

/** The groupings that carry random error, coarsest first, and the name of the finest, the observations themselves. */
export interface ErrorStrata {
  strata: readonly Stratum[];
  residual: string;
  /** The name under which each stratum of the layout appears in the analysis: groupings alike are one. */
  nameOf: ReadonlyMap<UnitStratum, string>;
}

/**
 * The error strata of some observations. Strata whose groups are the same (a container with one pot, a plot
 * of one position) are one stratum, under the coarsest one's name; a single container is no stratum.
 */
export function errorStrata(trial: Trial, observations: readonly Observation[]): ErrorStrata {
  const strata: Stratum[] = [];
  const nameOf = new Map<UnitStratum, string>();
  for (const name of strataOf(trial)) {
    const groups = groupIndexes(observations.map(({ position }) => unitOf(position, name)));
    const coarser = strata.at(-1);
    if (coarser && groupCount(coarser.groups) === groupCount(groups)) {
      nameOf.set(name, coarser.name);
      continue;
    }
    nameOf.set(name, name);
    if (groupCount(groups) > 1) strata.push({ name, groups });
  }
  const finest = strata.at(-1);
  if (finest && groupCount(finest.groups) === observations.length) {
    return { strata: strata.slice(0, -1), residual: finest.name, nameOf };
  }
  return { strata, residual: 'plant', nameOf };
}
