import type { Reading } from '../model/trial.ts';
import type { CsvRow } from '../read/csv.ts';
import { companionForm } from './csv-form.ts';
import { isDate } from './date.ts';
import type { Metadata, Readings } from './facts.ts';
import { parseDecimal, parseSigned, trimmed } from './number.ts';
import type { Report } from './rule.ts';
import { reportUnknownContainer } from './rules/unknown-container.ts';
import { reportValueNotANumber } from './rules/value-not-a-number.ts';
import { reportWrongDateInRow } from './rules/wrong-date-in-row.ts';
import { readTable, type Table } from './table.ts';

const file = 'readings.csv';

/** The columns of readings.csv that hold numbers. */
export const readingColumns = ['level', 'added', 'ec', 'ph', 'temperature', 'rain', 'overflow'] as const;
type ReadingColumn = (typeof readingColumns)[number];

/** Reads readings.csv; null where its headings are not sound. */
export function readReadings(bytes: Uint8Array, metadata: Metadata, report: Report): Readings | null {
  const rows: Reading[] = [];
  const starts: number[] = [];
  const doubted = new Set<string>();
  const form = {
    file,
    bytes,
    needed: ['date', 'container'],
    optional: [...readingColumns, 'remark'],
    lenient: true,
    closed: true,
    needRows: true,
    ...companionForm(metadata, bytes),
  };
  const { table } = readTable(form, report, (opened) => {
    const readingOf = readingReader(opened, metadata, doubted, report);
    return (row, isRagged) => {
      const reading = isRagged ? null : readingOf(row);
      if (reading === null) return;
      rows.push(reading);
      starts.push(row.start);
    };
  });
  return table === null ? null : { table, rows, starts, doubted };
}

function readingReader(
  table: Table,
  metadata: Metadata,
  doubted: Set<string>,
  report: Report,
): (row: CsvRow) => Reading | null {
  const known = (metadata.draft.containers ?? []).map(({ id }) => id);
  const containers = new Set(known);
  const cell = (row: CsvRow, name: string): string => trimmed(row.cells[table.index.get(name) ?? -1] ?? '');
  const numberIn = (row: CsvRow, name: ReadingColumn, where: string): number | null => {
    const text = cell(row, name);
    if (text === '') return null;
    const value = (name === 'temperature' ? parseSigned : parseDecimal)(text, table.decimal);
    if (value !== null) return value;
    doubted.add(where);
    reportValueNotANumber(report, table, row, name, text, where);
    return null;
  };
  return (row) => {
    const container = cell(row, 'container');
    const date = cell(row, 'date');
    const isKnown = containers.has(container);
    const isDay = isDate(date);
    if (!isKnown && !metadata.lost.has('containers'))
      reportUnknownContainer(report, table, row, container, known);
    // A row shifted, a line of totals, headings again: one thing is wrong with it, and told already.
    if (!isKnown && !isDay && !metadata.lost.has('containers')) return null;
    if (!isDay) doubted.add(container);
    if (!isDay) reportWrongDateInRow(report, table, row, date, isKnown ? container : null);
    const numbers = Object.fromEntries(readingColumns.map((name) => [name, numberIn(row, name, container)]));
    if (!isKnown || !isDay) return null;
    return {
      ...(numbers as Record<ReadingColumn, number | null>),
      date,
      container,
      remark: cell(row, 'remark'),
      line: row.line,
    };
  };
}
