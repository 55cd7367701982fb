import type { Findings } from '../model/findings.ts';
import type { Status, Trial } from '../model/trial.ts';
import { positionKey } from './position-key.ts';

/** Worst first: what a plant is counted as when its cuts went differently. */
const worstFirst: readonly Status[] = [
  'not planted',
  'culled',
  'dead',
  'no regrowth',
  'not weighed',
  'weighed',
];

/**
 * Counts the plants (or pots weighed whole) by what became of them, each once, by the worst of its cuts.
 * A plant that was never planted was not set.
 */
export function countsOf(trial: Trial): Findings['counts'] {
  const worst = new Map<string, Status>();
  for (const record of trial.harvest) {
    const key = `${positionKey(record)} ${record.plant ?? 'pot'}`;
    const known = worst.get(key);
    if (known === undefined || worstFirst.indexOf(record.status) < worstFirst.indexOf(known)) {
      worst.set(key, record.status);
    }
  }
  const statuses = [...worst.values()];
  const count = (status: Status) => statuses.filter((each) => each === status).length;
  return {
    set: statuses.length - count('not planted'),
    weighed: count('weighed'),
    dead: count('dead'),
    culled: count('culled'),
    not_weighed: count('not weighed'),
    not_planted: count('not planted'),
    no_regrowth: count('no regrowth'),
  };
}

/** True where what is counted is pots: the primary variable is of pots, or no row of a trial with several plants a pot names one. */
export function arePotsWeighedWhole({ metadata, harvest, positions }: Trial): boolean {
  if (metadata.variables[0].of === 'pot') return true;
  return harvest.every(({ plant }) => plant === null) && positions.some(({ plants }) => plants > 1);
}
