import type { Place } from '../read/place.ts';
import type { Facts } from './facts.ts';
import { whereOf } from './grid.ts';
import { indexesWhere } from './indexes-where.ts';
import { positionPlace, readingPlace, recordPlace } from './places.ts';

/** A text of the grower's own in a table: a plot's or a block's name, a remark. */
export interface TextOfTable {
  file: string;
  text: string;
  place: () => Place | null;
  where: string;
}

/** Calls for every text of the tables that is not empty, in the order of files and rows. */
export function eachTextOfTables(
  { layout, harvest, readings }: Pick<Facts, 'layout' | 'harvest' | 'readings'>,
  look: (text: TextOfTable) => void,
): void {
  if (layout?.table) {
    for (const index of indexesWhere(
      layout.positions,
      ({ plot, block }) => plot !== null || block !== null,
    )) {
      const position = layout.positions[index]!;
      for (const name of ['plot', 'block'] as const) {
        const place = (): Place | null => positionPlace(layout, index, name);
        const text = position[name];
        if (text !== null && text !== '') look({ file: 'layout.csv', text, place, where: whereOf(position) });
      }
    }
  }
  for (const index of indexesWhere(harvest?.records ?? [], ({ remark }) => remark !== '')) {
    const record = harvest!.records[index]!;
    const place = (): Place | null => recordPlace(harvest!, index, 'remark');
    look({ file: 'harvest.csv', text: record.remark, place, where: whereOf(record) });
  }
  for (const [index, { remark, container }] of (readings?.rows ?? []).entries()) {
    const place = (): Place | null => readingPlace(readings!, index, 'remark');
    if (remark !== '') look({ file: 'readings.csv', text: remark, place, where: container });
  }
}
