import type { Trial } from '../../model/trial.ts';
import type { Caution, Topic } from './caution.ts';
import list from './cautions.json' with { type: 'json' };
import { topicsOf } from './topics-of.ts';

/** The reviewed list, in its order. */
export const allCautions = list as readonly Caution[];

/**
 * The cautions that what is there calls for, in the order of the list. Those for certain species are given where
 * the species is one of theirs, and never without one.
 *
 * @param species the scientific name of the crop; where it is not known, its common name
 * @example cautionsAbout(['stocks']).map(({ id }) => id) // ["concentrates"]
 */
export function cautionsAbout(topics: readonly Topic[], species?: string): Caution[] {
  return allCautions.filter(
    (caution) =>
      topics.includes(caution.topic) &&
      (caution.species === undefined || caution.species.some((name) => isOf(species ?? '', name))),
  );
}

/** The cautions that a trial calls for by what it contains: its salts, stocks, containers, site and crop. */
export function cautionsOf(trial: Pick<Trial, 'metadata'>): Caution[] {
  const { crop } = trial.metadata;
  return cautionsAbout(topicsOf(trial), crop.species ?? crop.name);
}

function isOf(species: string, beginning: string): boolean {
  return `${species.trim().toLowerCase()} `.startsWith(`${beginning.toLowerCase()} `);
}
