import { say } from '../../model/say.ts';
import type { Summary, TreatmentDescription } from '../../model/findings.ts';

/** What a weight can be reckoned for. */
export type Measure = 'per_plant_harvested' | 'per_plant_set' | 'per_pot' | 'per_container';

/** The measures in words, in the order in which a page shows them. */
export const measureNames: Readonly<Record<Measure, string>> = {
  per_plant_harvested: 'per plant harvested',
  per_plant_set: 'per plant set',
  per_pot: 'per pot',
  per_container: 'per container',
};

const sentences: Readonly<Record<Measure, string>> = {
  per_plant_harvested: 'Plants of which nothing was cut are left out.',
  per_plant_set: 'Dead plants and those without regrowth count as 0.',
  per_pot: "The sum of the pot's plants, the dead as 0.",
  per_container: "The sum of the treatment's pots in the container.",
};

/** The measure in words, in the language being written. */
export function measureName(measure: Measure): string {
  return say(measureNames[measure]);
}

/** What the measure counts, as a sentence. */
export function meaningOf(measure: Measure): string {
  return say(sentences[measure]);
}

/**
 * The measures that tell a reader something: per plant set only where a plant was lost, per container only
 * where a treatment stood in several.
 */
export function measuresShown(descriptions: readonly TreatmentDescription[]): Measure[] {
  const some = (test: (description: TreatmentDescription) => boolean) => descriptions.some(test);
  const shown: [Measure, boolean][] = [
    ['per_plant_harvested', some((each) => each.per_plant_harvested !== null)],
    ['per_plant_set', some((each) => differ(each.per_plant_harvested, each.per_plant_set))],
    ['per_pot', true],
    ['per_container', some((each) => each.containers > 1)],
  ];
  return shown.filter(([, show]) => show).map(([measure]) => measure);
}

function differ(a: Summary | null, b: Summary | null): boolean {
  return a !== null && b !== null && a.n !== b.n;
}
