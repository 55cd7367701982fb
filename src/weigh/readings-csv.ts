import { readingColumns } from '../check/read-readings.ts';
import type { Readings } from '../check/facts.ts';
import type { ReadingEntry } from './journal.ts';
import { rowsText } from './rows-text.ts';

/** A folder's readings.csv as it was: our names of its columns in their order, and its cells. */
export interface GivenReadings {
  /** As they stand in the file, and our names of them. */
  headings: readonly string[];
  names: readonly string[];
  rows: readonly (readonly string[])[];
  delimiter: string;
  decimal: '.' | ',';
}

/** What a folder's readings.csv holds. */
export function givenReadings({ table }: Readings): GivenReadings {
  const names = [...table.index].sort(([, a], [, b]) => a - b).map(([name]) => name);
  const rows: string[][] = [];
  let isFirst = true;
  table.csv.read(({ cells }) => {
    if (!isFirst && cells.some((cell) => cell.trim() !== '')) rows.push([...cells]);
    isFirst = false;
  });
  const { delimiter } = table.csv;
  return {
    headings: names.map((name) => table.heading(name)),
    names,
    rows,
    delimiter,
    decimal: table.decimal,
  };
}

/**
 * readings.csv with the readings of a weigh-in after those that the folder held; null where there are none at
 * all. A column that was not there yet is added where a reading needs it.
 */
export function readingsCsv(given: GivenReadings | null, readings: readonly ReadingEntry[]): string | null {
  if (readings.length === 0) return null;
  const used = readingColumns.filter((name) => readings.some(({ values }) => (values[name] ?? '') !== ''));
  const known = given?.names ?? ['date', 'container'];
  const remarks = readings.some(({ remark }) => remark !== '') ? ['remark'] : [];
  const added = [...used, ...remarks].filter((name) => !known.includes(name));
  const names = [...known, ...added];
  const mark = given?.decimal ?? '.';
  const cellOf = (reading: ReadingEntry, name: string): string => {
    if (name === 'date' || name === 'container' || name === 'remark') return reading[name];
    return (reading.values[name] ?? '').replace(/[.,]/, mark);
  };
  return rowsText(
    [
      [...(given?.headings ?? known), ...added],
      ...(given?.rows ?? []).map((cells) => [...cells, ...added.map(() => '')]),
      ...readings.map((reading) => names.map((name) => cellOf(reading, name))),
    ],
    given?.delimiter ?? ',',
  );
}
