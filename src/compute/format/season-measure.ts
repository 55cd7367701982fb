import type { Seasons } from '../../model/generated/seasons.ts';

type Measure = Seasons['measure'];

const words: Readonly<Record<Measure, { name: string; each: string }>> = {
  per_pot: { name: 'per pot', each: ' a pot' },
  per_plant_set: { name: 'per plant set', each: ' a plant' },
  kg_per_m2: { name: 'per area', each: '' },
};

/** A measure's name, as "per pot". */
export const seasonMeasureName = (measure: Measure): string => words[measure].name;

/** What stands behind a quantity, as in "12 g a pot"; nothing where the unit says it already. */
export const forEach = (measure: Measure): string => words[measure].each;

/** Decimals of a mean over trials: grams to 1 g, yields by area to two, others to one. */
export function seasonDigits(unit: string): number {
  return unit === 'kg/m2' ? 2 : unit === 'g' ? 0 : 1;
}
