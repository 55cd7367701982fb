import type { PositionEffects } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { meanOf } from '../../statistics/mean.ts';
import { treatmentGroups, treatmentKey } from '../treatments.ts';
import type { Yields } from '../yields.ts';
import { type PotsOfContainer, potsOfContainers } from './pots-of-container.ts';
import { residualPattern } from './residual-pattern.ts';
import { edgeAndInterior, halves } from './sides.ts';
import { slopesOfContainer, type SlopesOfContainer } from './slopes.ts';

/** Below this p a slope is taken to matter, and treatment means are given at mid-grid beside the plain ones. */
const alpha = 0.05;

/**
 * Effects of place within each container, of pots over all cuts: slopes along the grid beside treatments,
 * edge and interior, halves by landmark, and Moran's I of what treatments leave. They are computed in
 * unreplicated trials too: place varies within a container whatever the treatments do.
 */
export function positionEffects(trial: Trial, yields: Yields): PositionEffects[] {
  return potsOfContainers(trial, yields).map((ofContainer) => {
    const slopes = slopesOfContainer(ofContainer);
    return {
      container: ofContainer.container.id,
      measure: 'per_pot',
      cut: 'all',
      rows: slopes.rows,
      columns: slopes.columns,
      ...edgeAndInterior(ofContainer),
      ...residualPattern(ofContainer),
      halves: halves(ofContainer),
      ...adjustedMeans(trial, ofContainer, slopes),
    };
  });
}

function adjustedMeans(
  trial: Trial,
  { pots }: PotsOfContainer,
  { rows, columns, adjusted }: SlopesOfContainer,
): Pick<PositionEffects, 'adjusted_means'> {
  const matters = [rows, columns].some(({ p }) => p !== null && p < alpha);
  if (!matters || adjusted.length === 0) return {};
  const means = treatmentGroups(trial).flatMap(({ treatment }) => {
    const key = treatmentKey(treatment);
    const values = pots
      .filter(({ position }) => treatmentKey(position.treatment) === key)
      .map(({ value }) => value);
    if (values.length === 0) return [];
    return [
      {
        treatment,
        plain: meanOf(values),
        adjusted: adjusted.find((each) => each.key === key)?.adjusted ?? null,
      },
    ];
  });
  return { adjusted_means: means };
}
