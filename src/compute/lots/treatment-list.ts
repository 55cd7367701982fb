import type { Treatment } from '../../model/trial.ts';

/** A factor whose levels are allotted, in the order of trial.yaml. */
export interface LotFactor {
  id: string;
  levels: readonly string[];
}

/** Every combination of the factors' levels, the last factor's level changing fastest. */
export function combinations(factors: readonly LotFactor[]): Treatment[] {
  return factors.reduce<Treatment[]>(
    (all, { id, levels }) => all.flatMap((one) => levels.map((level) => ({ ...one, [id]: level }))),
    [{}],
  );
}

/** The treatments that a group's units had, sorted into the order of `combinations`: what is shuffled and dealt anew. */
export function sortedTreatments(had: readonly Treatment[], factors: readonly LotFactor[]): Treatment[] {
  return combinationsHad(had, factors).flatMap(({ treatment, count }) =>
    Array<Treatment>(count).fill(treatment),
  );
}

function combinationsHad(had: readonly Treatment[], factors: readonly LotFactor[]) {
  const key = (treatment: Treatment) => JSON.stringify(factors.map(({ id }) => treatment[id]));
  const counts = Map.groupBy(had, key);
  return combinations(factors).map((treatment) => ({
    treatment,
    count: counts.get(key(treatment))?.length ?? 0,
  }));
}

/** Each combination equally often, in order; null where the units cannot be shared out evenly. */
export function evenTreatments(units: number, factors: readonly LotFactor[]): Treatment[] | null {
  const all = combinations(factors);
  if (units === 0 || units % all.length !== 0) return null;
  return all.flatMap((treatment) => Array<Treatment>(units / all.length).fill(treatment));
}
