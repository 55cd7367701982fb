import type { Harvest } from './facts.ts';

/** The records of each position, by indexes in the file's order. */
export interface RecordsByPosition {
  /** Those of a position, by its index in the layout. */
  at(position: number): readonly number[];
  /** The positions that have more than one, with them: a position with one cannot contradict itself. */
  several: ReadonlyMap<number, readonly number[]>;
}

const kept = new WeakMap<Harvest, RecordsByPosition>();

/** The records of each position, put in order once for a harvest. */
export function recordsByPosition(harvest: Harvest): RecordsByPosition {
  const before = kept.get(harvest);
  if (before !== undefined) return before;
  const found = inOrder(harvest.positionOf);
  kept.set(harvest, found);
  return found;
}

function inOrder(positionOf: readonly number[]): RecordsByPosition {
  let last = -1;
  for (const position of positionOf) if (position > last) last = position;
  const first = new Int32Array(last + 1).fill(-1);
  const several = new Map<number, number[]>();
  positionOf.forEach((position, index) => {
    if (first[position] === -1) first[position] = index;
    else {
      const list = several.get(position);
      if (list === undefined) several.set(position, [first[position]!, index]);
      else list.push(index);
    }
  });
  const at = (position: number): readonly number[] => {
    const one = first[position] ?? -1;
    return several.get(position) ?? (one === -1 ? [] : [one]);
  };
  return { at, several };
}
