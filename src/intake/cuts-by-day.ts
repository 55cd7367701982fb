import type { TakenRow } from './take-rows.ts';

/**
 * Cuts by their days where none is numbered: the cut whose day it is, where the trial has several and each row's day is
 * one of them; else in the order of the days, where each plant of a container was cut on all of them. Rows that do not
 * fit stay without a cut, and a plant in two of them is told of.
 */
export function withCuts(rows: readonly TakenRow[], cuts: readonly string[]): readonly TakenRow[] {
  if (rows.some(({ keys }) => keys.cut !== '')) return rows;
  const put = (row: TakenRow, cut: number): TakenRow => ({ ...row, keys: { ...row.keys, cut: String(cut) } });
  if (cuts.length > 1 && rows.every(({ keys }) => cuts.includes(keys.date)))
    return rows.map((row) => put(row, cuts.indexOf(row.keys.date) + 1));
  const days = [...new Set(rows.map(({ keys }) => keys.date))].sort();
  const plants = Map.groupBy(rows, plantOf);
  const isWhole = [...plants.values()].every((cut) =>
    days.every((day) => cut.some(({ keys }) => keys.date === day)),
  );
  return days.length > 1 && isWhole && !days.includes('')
    ? rows.map((row) => put(row, days.indexOf(row.keys.date) + 1))
    : rows;
}

/** The plant that a row is of, at whatever cut. */
export const plantOf = ({ keys }: TakenRow): string =>
  `${keys.container}|${keys.row}|${keys.column}|${keys.plant}`;
