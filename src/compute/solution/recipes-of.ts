import type { Trial } from '../../model/trial.ts';
import { litresIn } from '../../model/units.ts';
import type { Recipe } from '../nutrients/recipe.ts';

/** A recipe of the site, and the trials that were filled with it. */
export interface SiteRecipe {
  /** Those with the very same salts, water and stock ratio, in their order. */
  trials: readonly [Trial, ...Trial[]];
  recipe: Recipe;
}

/** The recipes of the trials that give their salts, each once. */
export function recipesOf(trials: readonly Trial[]): SiteRecipe[] {
  const withSalts = trials.filter(({ metadata }) => metadata.nutrients?.salts !== undefined);
  const groups = Map.groupBy(withSalts, ({ metadata }) => JSON.stringify(metadata.nutrients));
  return [...groups.values()].map((group) => {
    const [first, ...rest] = group as [Trial, ...Trial[]];
    return { trials: [first, ...rest], recipe: first.metadata.nutrients! };
  });
}

/** Litres of solution in the first container that gives a volume; null where none does. */
export function litresOfContainer({ metadata }: Pick<Trial, 'metadata'>): number | null {
  const volume = metadata.containers.find((container) => container.volume)?.volume;
  return volume ? volume.value * litresIn[volume.unit]! : null;
}
