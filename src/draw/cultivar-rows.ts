import type { Seasons } from '../model/generated/seasons.ts';
import { say } from '../model/say.ts';

/** A cultivar of a comparison across seasons as a figure needs it. */
export interface CultivarRow {
  cultivar: string;
  adjusted: Seasons['adjusted_means'][number];
  cells: Seasons['cells'];
  /** From 0: which linked set it belongs to. */
  set: number;
}

/** How the rows of a set are sorted: the highest adjusted mean first, by name, or the most trials first. */
export type CultivarOrder = 'mean' | 'name' | 'trials';

/** The cultivars in their linked sets, the largest set first; within a set by the order asked for. */
export function cultivarRows(
  entry: Seasons,
  name: (cultivar: string) => string,
  order: CultivarOrder = 'mean',
): CultivarRow[] {
  const sets = [...entry.linked_sets].sort((a, b) => b.length - a.length);
  const cells = Map.groupBy(entry.cells, ({ cultivar }) => cultivar);
  const rows = entry.adjusted_means.map((adjusted): CultivarRow => {
    const { cultivar } = adjusted;
    return {
      cultivar,
      adjusted,
      cells: cells.get(cultivar) ?? [],
      set: sets.findIndex((set) => set.includes(cultivar)),
    };
  });
  const byName = (a: CultivarRow, b: CultivarRow) => (name(a.cultivar) < name(b.cultivar) ? -1 : 1);
  const within: Readonly<Record<CultivarOrder, (a: CultivarRow, b: CultivarRow) => number>> = {
    mean: (a, b) => b.adjusted.mean - a.adjusted.mean,
    name: byName,
    trials: (a, b) => b.adjusted.trials - a.adjusted.trials || byName(a, b),
  };
  return rows.sort((a, b) => a.set - b.set || within[order](a, b));
}

/** The first rows, and that of the check wherever it stands: as many as can be looked over. */
export function firstRows(
  rows: readonly CultivarRow[],
  check: string | null,
  most: number,
): readonly CultivarRow[] {
  return rows.filter(({ cultivar }, index) => index < most || cultivar === check);
}

/** The heading of a linked set in a figure: who is compared with whom. */
export function setHeading(entry: Seasons, rows: readonly CultivarRow[], set: number): string {
  const count = rows.filter((row) => row.set === set).length;
  const which = say('Linked set {set} of {count}', { set: set + 1, count: entry.linked_sets.length });
  return count > 1 ? which : say('{set}: met no other cultivar', { set: which });
}
