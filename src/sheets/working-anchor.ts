import { type Measure, measuresShown } from '../compute/tables/measures.ts';
import { workingId } from '../compute/workings/working.ts';
import type { TreatmentDescription } from '../model/findings.ts';

/**
 * The anchor of a mean's working on the page of its trial. Where no plant was lost, means per plant set are those
 * per plant harvested, and the page works them out once.
 */
export function workingAnchor(
  cut: number | 'all',
  row: number,
  measure: Measure,
  descriptions: readonly TreatmentDescription[],
): string {
  const shown = measuresShown(descriptions);
  if (shown.includes(measure)) return workingId(cut, row, measure);
  const same = measure === 'per_plant_set' && shown.includes('per_plant_harvested');
  return same ? workingId(cut, row, 'per_plant_harvested') : 'workings';
}
