import type { Treatment } from '../model/trial.ts';
import { parseWhole } from './number.ts';

/** The factor whose levels say how many plants were set in each pot. */
export const plantsPerPotFactor = 'plants_per_pot';

/** The most plants that a pot may hold: more is a slip, or a weight in the wrong column. */
export const mostPlants = 1000;

/** Plants set in a pot of a treatment: the level of plants_per_pot where that is a factor, else 1. */
export function plantsPerPot(treatment: Treatment): number {
  const level = Object.hasOwn(treatment, plantsPerPotFactor) ? treatment[plantsPerPotFactor] : undefined;
  return Math.min(mostPlants, Math.max(1, parseWhole(level ?? '1') ?? 1));
}
