import type { Factor } from '../../model/trial.ts';
import type { Recipe } from './recipe.ts';

/**
 * How many times the recipe a container with this treatment was filled with: 1 where no factor changes the solution,
 * the level of a factor `strength`, or null where another factor may have changed the recipe itself.
 *
 * @param treatment that of the whole container, factor to level
 */
export function strengthOf(
  treatment: Readonly<Record<string, string>> | undefined,
  factors: readonly Factor[],
): number | null {
  let strength = 1;
  for (const { id, kind } of factors) {
    if (kind === 'cultivar' || id === 'plants_per_pot') continue;
    const level = Number(treatment?.[id]);
    if (id !== 'strength' || !(level > 0)) return null;
    strength = level;
  }
  return strength;
}

/** A recipe with so many times its salts in the same water; the same recipe at strength 1. */
export function atStrength(recipe: Recipe, strength: number): Recipe {
  const { salts } = recipe;
  if (salts === undefined) return recipe;
  const [first, ...rest] = salts.map((salt) => ({
    ...salt,
    grams_per_litre: salt.grams_per_litre * strength,
  }));
  return { ...recipe, salts: [first!, ...rest] };
}
