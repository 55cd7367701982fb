/** What treatments are allotted to, coarsest first. */
export const lotUnits = ['container', 'plot', 'position'] as const;
export type LotUnit = (typeof lotUnits)[number];

/** A position of the trial before its treatment is drawn. */
export interface LotPlace {
  container: string;
  /** From 1. */
  row: number;
  /** From 1. */
  column: number;
  block: string | null;
  /** Positions that are one experimental unit share it; a position without one is a plot of its own. */
  plot: string | null;
}

/** The places in the order of lots: containers as listed, within them row by row, within rows by column. */
export function inOrderOfLots<T extends LotPlace>(places: readonly T[], containers: readonly string[]): T[] {
  const rank = new Map(containers.map((id, index) => [id, index]));
  const of = ({ container }: LotPlace) => rank.get(container) ?? containers.length;
  return [...places].sort((a, b) => of(a) - of(b) || a.row - b.row || a.column - b.column);
}

/** The places of each unit, units in the order in which their first places stand. */
export function unitsOf<T extends LotPlace>(places: readonly T[], unit: LotUnit): T[][] {
  return [...Map.groupBy(places, (place) => unitName(place, unit)).values()];
}

/** The places of each block, blocks in the order in which their first places stand; all where no block is given. */
export function blocksOf<T extends LotPlace>(places: readonly T[]): T[][] {
  return [...Map.groupBy(places, ({ block }) => block ?? '').values()];
}

function unitName({ container, plot, row, column }: LotPlace, unit: LotUnit): string {
  if (unit === 'container') return container;
  return unit === 'plot' && plot !== null ? `plot ${plot}` : `${container} ${String(row)} ${String(column)}`;
}
