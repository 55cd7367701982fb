import type { Position } from '../model/trial.ts';
import { type Allotment, unitKeys } from './strata.ts';
import { treatmentInWords } from './treatment-words.ts';

/**
 * Whether blocks that cannot hold every treatment were laid out by a plan and not by a slip: all are of one size,
 * none holds a treatment twice, the treatments that are not in every block have equally many places, as in
 * balanced incomplete blocks, or where entries stand among checks that every block repeats; and shared treatments
 * lead from each block to every other, so that all can be compared.
 */
export function areIncompleteBlocks(
  blocks: ReadonlyMap<string, readonly Position[]>,
  unit: Allotment,
): boolean {
  const held = [...blocks.values()].map((members) => unitKeys(members, unit, treatmentInWords));
  const places = new Map<string, number>();
  for (const treatment of held.flat()) places.set(treatment, (places.get(treatment) ?? 0) + 1);
  const counts = new Set([...places.values()].filter((count) => count < held.length));
  return (
    new Set(held.map(({ length }) => length)).size === 1 &&
    held.every((treatments) => new Set(treatments).size === treatments.length) &&
    counts.size === 1 &&
    areLinked(held)
  );
}

/** Whether treatments in common lead from the first block to each of the others. */
function areLinked([first = [], ...others]: readonly (readonly string[])[]): boolean {
  const reached = new Set(first);
  let left = others;
  while (left.length > 0) {
    const further = left.filter((treatments) => !treatments.some((treatment) => reached.has(treatment)));
    if (further.length === left.length) return false;
    for (const treatment of left.filter((each) => !further.includes(each)).flat()) reached.add(treatment);
    left = further;
  }
  return true;
}
