import type { Harvest } from './facts.ts';

const kept = new WeakMap<Harvest, ReadonlyMap<number, readonly number[]>>();

/** The indexes of the records of each position (by its index in the layout), in the file's order. */
export function recordsByPosition(harvest: Harvest): ReadonlyMap<number, readonly number[]> {
  const before = kept.get(harvest);
  if (before !== undefined) return before;
  const found = new Map<number, number[]>();
  harvest.positionOf.forEach((position, index) => {
    const list = found.get(position);
    if (list === undefined) found.set(position, [index]);
    else list.push(index);
  });
  kept.set(harvest, found);
  return found;
}
