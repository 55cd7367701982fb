import { positionKey } from '../compute/position-key.ts';
import { yieldsOf } from '../compute/yields.ts';
import type { Position, Trial } from '../model/trial.ts';
import { type MarkedStatus, markedStatuses } from './status-mark.ts';

/** What a pot came to over all cuts. */
export interface PotOutcome {
  position: Position;
  /** In the primary variable's unit, g for weights; null where unknown or left out. */
  value: number | null;
  /** Each cut's value, in the order of `cuts`. */
  byCut: readonly (number | null)[];
  /** What else became of its plants, without repeats, in the order of the key. */
  statuses: readonly MarkedStatus[];
  /** True where nothing of it was weighed, so that a mark stands in place of a number. */
  nothingWeighed: boolean;
}

/** The outcome of every pot of the layout. */
export function potOutcomes(trial: Trial): { outcomes: PotOutcome[]; cuts: number[] } {
  const cuts = [...new Set(trial.harvest.map(({ cut }) => cut))].sort((a, b) => a - b);
  const records = Map.groupBy(trial.harvest, positionKey);
  const byCut = cuts.map((cut) => yieldsOf(trial, cut).pots);
  const outcomes = yieldsOf(trial, 'all').pots.map(({ position, pot }, index) => {
    const own = records.get(positionKey(position)) ?? [];
    const seen = new Set(own.map(({ status }) => status));
    return {
      position,
      value: pot.value,
      byCut: byCut.map((pots) => pots[index]?.pot.value ?? null),
      statuses: markedStatuses.filter((status) => seen.has(status)),
      nothingWeighed: !seen.has('weighed'),
    };
  });
  return { outcomes, cuts };
}
