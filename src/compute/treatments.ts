import type { Position, Treatment, Trial } from '../model/trial.ts';

/** Names a treatment combination: its level ids in the order of the trial's factors. */
export function treatmentKey(treatment: Treatment): string {
  return JSON.stringify(Object.entries(treatment));
}

/** A treatment combination that was grown, with its positions. */
export interface TreatmentGroup {
  treatment: Treatment;
  positions: readonly Position[];
}

/**
 * The treatment combinations that were grown, in the order of the factors' levels. A trial without
 * factors has one, the empty combination.
 */
export function treatmentGroups(trial: Trial): TreatmentGroup[] {
  const factors = trial.metadata.factors ?? [];
  const groups = new Map<string, { treatment: Treatment; positions: Position[]; rank: number[] }>();
  for (const position of trial.positions) {
    const key = treatmentKey(position.treatment);
    const group = groups.get(key);
    if (group) group.positions.push(position);
    else {
      const rank = factors.map(({ id, levels }) =>
        levels.findIndex((level) => level.id === position.treatment[id]),
      );
      groups.set(key, { treatment: position.treatment, positions: [position], rank });
    }
  }
  return [...groups.values()].sort((a, b) => compareRanks(a.rank, b.rank));
}

function compareRanks(a: readonly number[], b: readonly number[]): number {
  for (let index = 0; index < a.length; index += 1) {
    const difference = a[index]! - b[index]!;
    if (difference !== 0) return difference;
  }
  return 0;
}
