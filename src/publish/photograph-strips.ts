import type { Photograph } from './photographs.ts';

/** Photographs of one place, oldest first; a photograph of no place, or the only one of its place, stands alone. */
export interface PhotographStrip {
  /** Null for a photograph that stands alone. */
  where: string | null;
  photographs: readonly Photograph[];
}

/** A trial's photographs in strips by place, in the order in which each place first comes up. */
export function strips(photographs: readonly Photograph[]): PhotographStrip[] {
  const groups = Map.groupBy(photographs, (photograph) => photograph.where ?? photograph);
  return [...groups.values()].map((group): PhotographStrip => {
    const [first, second] = group;
    if (second === undefined) return { where: null, photographs: group };
    const day = ({ date }: Photograph) => date ?? '';
    const oldestFirst = [...group].sort((a, b) => (day(a) < day(b) ? -1 : day(a) > day(b) ? 1 : 0));
    return { where: first!.where, photographs: oldestFirst };
  });
}
