import type { WeighTrial } from '../model/weigh-trial.ts';
import { primaryOf } from './weigh-trial.ts';

/** A plant, or a pot that is weighed whole. */
export interface Place {
  container: string;
  row: number;
  column: number;
  /** From 1; null where the pot is weighed whole. */
  plant: number | null;
}

/** How the containers are walked. */
export interface Walk {
  /** True where every other row is walked back, so that no step is made for nothing. */
  boustrophedon: boolean;
  /** True where pots of several plants are weighed whole. */
  whole: boolean;
}

/** A text that is the same exactly for the same place at the same cut. */
export function placeKey({ container, row, column, plant }: Place, cut: number): string {
  return [cut, container, row, column, plant ?? ''].join('|');
}

/**
 * All places of a trial in the order in which they are weighed: container by container as trial.yaml lists
 * them, row by row from the landmark beside row 1, along each row from column 1, or there and back.
 */
export function placesOf(trial: WeighTrial, walk: Walk): readonly Place[] {
  const known = walked.get(trial) ?? new Map<string, readonly Place[]>();
  walked.set(trial, known);
  const key = `${String(walk.boustrophedon)} ${String(walk.whole)}`;
  const places = known.get(key) ?? inOrder(trial, walk);
  known.set(key, places);
  return places;
}

/** A trial is walked anew at every entry, and always alike. */
const walked = new WeakMap<WeighTrial, Map<string, readonly Place[]>>();

function inOrder(trial: WeighTrial, { boustrophedon, whole }: Walk): Place[] {
  const isOfPot = primaryOf(trial).of === 'pot';
  const order = new Map(trial.metadata.containers.map(({ id }, index) => [id, index]));
  const along = (row: number, column: number) => (boustrophedon && row % 2 === 0 ? -column : column);
  const positions = [...trial.positions].sort(
    (a, b) =>
      (order.get(a.container) ?? 0) - (order.get(b.container) ?? 0) ||
      a.row - b.row ||
      along(a.row, a.column) - along(b.row, b.column),
  );
  return positions.flatMap(({ container, row, column, plants }): Place[] => {
    const at = { container, row, column };
    if (isOfPot || (whole && plants > 1)) return [{ ...at, plant: null }];
    return Array.from({ length: plants }, (_, index) => ({ ...at, plant: index + 1 }));
  });
}
