import { type Nutrient, nutrientNames } from '../../model/nutrient-keys.ts';

/** One value for each nutrient, reckoned by a function of its name. */
export function byNutrient<Value>(valueOf: (nutrient: Nutrient) => Value): Record<Nutrient, Value> {
  const entries = nutrientNames.map((nutrient) => [nutrient, valueOf(nutrient)] as const);
  return Object.fromEntries(entries) as Record<Nutrient, Value>;
}
