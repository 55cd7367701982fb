import { openCsv, type Csv, type CsvRow } from '../read/csv.ts';
import type { Place } from '../read/place.ts';
import { nearest } from './nearest.ts';
import { trimmed, type DecimalMark } from './number.ts';
import type { Report } from './rule.ts';
import { reportBlankHeading } from './rules/blank-heading.ts';
import { reportDuplicateColumn } from './rules/duplicate-column.ts';
import { reportMissingColumn } from './rules/missing-column.ts';
import { reportNoHeadings } from './rules/no-headings.ts';
import { reportNoRows } from './rules/no-rows.ts';
import { raggedRows } from './rules/ragged-row.ts';
import { isTurned, reportTurned } from './rules/turned-table.ts';
import { reportUnknownColumn } from './rules/unknown-column.ts';
import { reportUnpairedQuote } from './rules/unpaired-quote.ts';
import { actualDelimiter, reportSeparatorLine, reportWrongDelimiter } from './rules/wrong-delimiter.ts';
import { textOf } from './text-file.ts';

/** A CSV file whose headings are known. */
export interface Table {
  file: string;
  csv: Csv;
  decimal: DecimalMark;
  /** Our name of a column to its index; absent where the file has no such column. */
  index: ReadonlyMap<string, number>;
  /** The heading in the file of a column by our name. */
  heading(name: string): string;
  /** Where a row's cell stands, by our name of the column. */
  place(row: CsvRow, name: string): Place;
}

/** How a CSV file should look. */
export interface TableForm {
  file: string;
  bytes: Uint8Array;
  delimiter: string;
  decimal: DecimalMark;
  needed: readonly string[];
  optional: readonly string[];
  /** Our name to the heading in the file, where the grower has other headings. */
  headings: ReadonlyMap<string, string>;
  /** True where the grower's headings may be absent in favour of ours. */
  lenient: boolean;
  /** False where trial.yaml does not tell all columns, so that no heading is called unknown. */
  closed: boolean;
  needRows: boolean;
}

/** What became of a table: null where its headings are not sound. */
export interface TableRead {
  table: Table | null;
  /** True where rows were lost to faults of form. */
  faulty: boolean;
}

/**
 * Reads a table row by row. `begin` is called once the headings are known and answers with what each row is
 * given to; ragged rows are reported and given on with `isRagged`.
 */
export function readTable(
  form: TableForm,
  report: Report,
  begin: (table: Table) => (row: CsvRow, isRagged: boolean) => void,
): TableRead {
  const { file } = form;
  const text = textOf(file, form.bytes, report);
  if (text === null) return { table: null, faulty: true };
  const csv = openCsv(text, form.delimiter);
  if (hasOtherDelimiter(form, csv.text, report)) return { table: null, faulty: true };
  let table: Table | null = null;
  let onRow: ((row: CsvRow, isRagged: boolean) => void) | null = null;
  let width = 0;
  let headings: readonly string[] = [];
  let rows = 0;
  let isRaggedAnywhere = false;
  const ragged = raggedRows(report, file, () => headings);
  const faults = csv.read((row, isBroken) => {
    if (isBroken) {
      // Its cells are not those that were meant; without headings the rows after it mean nothing either.
      if (width === 0) width = -1;
      return;
    }
    if (width === -1) return;
    if (width === 0) {
      width = row.cells.length;
      headings = row.cells;
      if (hasNoHeading(form, row.cells)) {
        width = -1;
        reportNoHeadings(report, file, row.line, row.cells, headingsOf(form), findHeadings(form, csv));
        return;
      }
      const isWhole = headingsOf(form).every((heading) => row.cells.map(trimmed).includes(heading));
      if (!isWhole && isTurned(csv, headingsOf(form))) {
        width = -1;
        reportTurned(report, file, row.cells[0] ?? '');
        return;
      }
      table = readHeadings(form, csv, row, report);
      if (table !== null) onRow = begin(table);
      return;
    }
    const isRagged = row.cells.length !== width;
    if (isBlank(row.cells)) return;
    rows += 1;
    if (isRagged) isRaggedAnywhere = true;
    ragged.take(row, isRagged);
    onRow?.(row, isRagged);
  });
  ragged.end(table !== null);
  for (const fault of faults) reportUnpairedQuote(report, file, fault);
  if (table !== null && rows === 0 && faults.length === 0 && form.needRows) reportNoRows(report, file);
  return { table, faulty: faults.length > 0 || isRaggedAnywhere || rows === 0 };
}

function headingsOf({ needed, headings }: TableForm): string[] {
  return needed.map((name) => headings.get(name) ?? name);
}

/** True where not one heading is a needed one or alike. */
function hasNoHeading(form: TableForm, cells: readonly string[]): boolean {
  const wanted = [...headingsOf(form), ...form.needed];
  return !cells.some((cell) => wanted.includes(cell) || nearest(cell, wanted) !== null);
}

/** The line within the first rows that holds all needed headings, or null. */
function findHeadings(form: TableForm, csv: Csv): number | null {
  const wanted = headingsOf(form);
  let line: number | null = null;
  csv.read((row) => {
    const cells = row.cells.map(trimmed);
    if (line === null && wanted.every((heading) => cells.includes(heading))) ({ line } = row);
  });
  return line;
}

/** Rows of nothing but separators are what spreadsheets leave of deleted rows. */
function isBlank(cells: readonly string[]): boolean {
  return (cells[0] ?? '').trim() === '' && cells.every((cell) => cell.trim() === '');
}

function hasOtherDelimiter(form: TableForm, text: string, report: Report): boolean {
  const firstLine = text.slice(text.search(/\S/)).split('\n', 1)[0] ?? '';
  if (/^"?sep=/i.test(firstLine)) {
    reportSeparatorLine(report, form.file);
    return true;
  }
  const actual = actualDelimiter(firstLine, form.delimiter);
  if (actual === null) return false;
  reportWrongDelimiter(report, form.file, actual, form.delimiter, text);
  return true;
}

function readHeadings(form: TableForm, csv: Csv, row: CsvRow, report: Report): Table | null {
  const { file, needed, optional } = form;
  const found = row.cells.map(trimmed);
  const headingOf = (name: string): string => {
    const own = form.headings.get(name);
    return own === undefined || (form.lenient && !found.includes(own)) ? name : own;
  };
  const names = [...needed, ...optional];
  const nameOf = new Map(names.map((name) => [headingOf(name), name]));
  const index = new Map<string, number>();
  const unknown: [heading: string, place: Place, column: number][] = [];
  const unnamed: ((instead: string | null) => void)[] = [];
  let isSound = true;
  for (const [column, heading] of found.entries()) {
    const place = csv.place(row, column);
    const name = nameOf.get(heading) ?? (form.closed ? null : heading);
    if (heading === '') {
      unnamed.push((instead) => reportBlankHeading(report, file, place, column, instead));
      isSound = false;
    } else if (name === null) unknown.push([heading, place, column]);
    else if (index.has(name)) {
      const first = index.get(name) ?? 0;
      unnamed.push((instead) => reportDuplicateColumn(report, file, place, { heading, first, instead }));
      isSound = false;
    } else index.set(name, column);
  }
  const missing = needed.filter((name) => !index.has(name));
  const absent = names.filter((name) => !index.has(name)).map(headingOf);
  const guessed = new Set<string>();
  // A heading is more likely one that is missing, misspelt, than one that is there already.
  const guess = (heading: string): string | null =>
    nearest(heading, absent) ?? nearest(withoutUnit(heading), absent);
  const missed = missing.map(headingOf).filter((heading) => !unknown.some(([one]) => guess(one) === heading));
  // Where one column is missing and one has a name that says nothing, it is probably that one.
  const strange = unknown.filter(([heading]) => guess(heading) === null).length + unnamed.length;
  const instead = missed.length === 1 && strange === 1 ? missed[0]! : null;
  if (instead !== null) guessed.add(instead);
  for (const reportUnnamed of unnamed) reportUnnamed(instead);
  for (const [heading, place, column] of unknown) {
    const best = guess(heading);
    if (best !== null) guessed.add(best);
    const meant = best ?? nearest(heading, names.map(headingOf));
    reportUnknownColumn(report, file, place, { heading, meant, instead, known: names.map(headingOf) });
    // It is read as what it probably is, so that its absence is not told in every row.
    const name = optional.find((one) => headingOf(one) === best);
    if (name !== undefined && !index.has(name)) index.set(name, column);
  }
  for (const name of missing) {
    isSound = false;
    const heading = headingOf(name);
    if (!guessed.has(heading)) reportMissingColumn(report, file, heading, found);
  }
  if (!isSound) return null;
  return {
    file,
    csv,
    decimal: form.decimal,
    index,
    heading: headingOf,
    place: (at, name) => csv.place(at, index.get(name) ?? 0),
  };
}

/** A heading without the unit behind it: `row (cm)`, `ec [mS]`. */
function withoutUnit(heading: string): string {
  return heading.replace(/\s*[([].*$/, '');
}
