import type { Trial } from '../model/trial.ts';

/** A cut by its number, or all cuts together. */
export type Cut = number | 'all';

/** The numbers of the trial's cuts, from 1. */
export function cutNumbers(trial: Trial): number[] {
  return (trial.metadata.dates?.cuts ?? []).map((_, index) => index + 1);
}

/** The cuts that are analysed: all together and, where there are several, each by itself. */
export function analysedCuts(trial: Trial): Cut[] {
  const cuts = cutNumbers(trial);
  return cuts.length > 1 ? ['all', ...cuts] : ['all'];
}

/** The day on which the cut (or, for all cuts, the last) was taken; null where none is given. */
export function dateOfCut(trial: Trial, cut: Cut): string | null {
  const cuts = trial.metadata.dates?.cuts ?? [];
  return (cut === 'all' ? cuts.at(-1) : cuts[cut - 1]) ?? null;
}
