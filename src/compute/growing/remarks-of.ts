import { say } from '../../model/say.ts';
import type { Trial } from '../../model/trial.ts';
import { formatDate } from '../format/format-date.ts';
import { positionKey } from '../position-key.ts';

/** A remark that was written beside a weight. */
export interface Remark {
  place: string;
  status: string;
  text: string;
  /** The row of weights.csv, its heading being row 1. */
  row: number;
}

/** Every remark of the harvest, in its order. */
export function remarksOf(trial: Trial): Remark[] {
  return trial.harvest.flatMap((record, index) =>
    record.remark === ''
      ? []
      : [{ place: recordPlace(record), status: record.status, text: record.remark, row: index + 2 }],
  );
}

/** A row of the harvest in words: its position, and its plant and cut where they are not the first. */
export function recordPlace(record: Trial['harvest'][number]): string {
  const plant =
    record.plant === null || record.plant === 1 ? '' : `, ${say('plant {plant}', { plant: record.plant })}`;
  const cut = record.cut === 1 ? '' : `, ${say('cut {cut}', { cut: record.cut })}`;
  return positionKey(record) + plant + cut;
}

/** Every event of the notebook, with its day in words. */
export function eventsOf(trial: Trial): { day: string; where: string; what: string }[] {
  return (trial.metadata.events ?? []).map(({ date, where, what }) => ({
    day: formatDate(date),
    where: where ?? '',
    what,
  }));
}
