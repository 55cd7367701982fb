import type { Measure } from '../../compute/tables/measures.ts';
import type { Fact } from './fact.ts';

export type Cut = number | 'all';

/** " at cut 2"; nothing for all cuts together. */
export const inCut = (cut: Cut): string => (cut === 'all' ? '' : ` at cut ${String(cut)}`);
/** As a component names the cut. */
export const cutAttribute = (cut: Cut): string => (cut === 'all' ? '' : ` cut="${String(cut)}"`);
/** As a component names a measure. */
export const per: Readonly<Record<Measure, string>> = {
  per_plant_set: 'plant_set',
  per_plant_harvested: 'plant_harvested',
  per_pot: 'pot',
  per_container: 'container',
};

/** A fact, where its number is known. */
export function number(value: number | null, fact: Omit<Fact, 'value'>): Fact[] {
  return value === null ? [] : [{ ...fact, value }];
}
