import type { Treatment } from '../model/trial.ts';
import { parseWhole } from './number.ts';

/** The factor whose levels say how many plants were set in each pot. */
export const plantsPerPotFactor = 'plants_per_pot';

/** Plants set in a pot of a treatment: the level of plants_per_pot where that is a factor, else 1. */
export function plantsPerPot(treatment: Treatment): number {
  const level = Object.hasOwn(treatment, plantsPerPotFactor) ? treatment[plantsPerPotFactor] : undefined;
  return Math.max(1, parseWhole(level ?? '1') ?? 1);
}
