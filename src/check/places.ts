import type { Place } from '../read/place.ts';
import type { Harvest, Layout, Readings } from './facts.ts';

/** Where a record's cell stands in harvest.csv, by our name of the column. */
export function recordPlace({ table, records, starts }: Harvest, index: number, name = 'container'): Place {
  return table.place({ cells: [], line: records[index]?.line ?? 1, start: starts[index] ?? 0 }, name);
}

/** Where a reading's cell stands in readings.csv. */
export function readingPlace({ table, rows, starts }: Readings, index: number, name: string): Place {
  return table.place({ cells: [], line: rows[index]?.line ?? 1, start: starts[index] ?? 0 }, name);
}

/** Where a position's cell stands in layout.csv; null where there is no layout.csv. */
export function positionPlace(
  { table, positions, starts }: Layout,
  index: number,
  name = 'container',
): Place | null {
  if (table === null) return null;
  return table.place({ cells: [], line: positions[index]?.line ?? 1, start: starts[index] ?? 0 }, name);
}
