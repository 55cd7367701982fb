import { guardedText } from './formula-guard.ts';

/** What a cell of a table holds; null is empty. */
export type Cell = string | number | null;

/** A table that knows nothing of file formats: the same rows go into CSV, spreadsheet and Parquet. */
export interface Table {
  columns: readonly string[];
  rows: readonly (readonly Cell[])[];
}

/** Shortest decimal that reads back to the same double; empty for what is not a finite number. */
export function numberText(value: number): string {
  return Number.isFinite(value) ? String(value === 0 ? 0 : value) : '';
}

function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return numberText(cell);
  const text = guardedText(cell);
  return /[",\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * CSV after RFC 4180, in which a quoted cell may hold commas, quotes and line breaks. Lines end with LF
 * alone: the RFC asks its readers to be liberal here, CSV on the Web and Data Package name LF as well, and
 * the line tools of every system then leave no stray return on the last column.
 */
export function csvText(table: Table, delimiter: ',' | '\t' = ','): string {
  const lines = [table.columns, ...table.rows].map((row) => row.map(cellText).join(delimiter));
  return `${lines.join('\n')}\n`;
}
