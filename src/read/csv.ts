import Papa from 'papaparse';
import { columnAt, countLineFeeds, placeAt, withLineFeeds, type Place } from './place.ts';

/** One row of a CSV file: its cells as text, and where it begins. */
export interface CsvRow {
  cells: readonly string[];
  /** Physical line from 1 on which the row begins. */
  line: number;
  /** Offset in the text of the row's first character. */
  start: number;
}

/** A fault of the file's form, found while reading rows. */
export interface CsvFault {
  kind: 'unterminated quote' | 'stray quote';
  /** Where the quote opened. */
  place: Place;
}

/** A CSV text that can be read row by row. */
export interface Csv {
  /** The text with every line break a line feed. */
  text: string;
  delimiter: string;
  /** Calls back for each row in turn, blank lines left out; a broken row holds a quote that does not pair. */
  read(onRow: (row: CsvRow, isBroken: boolean) => void): CsvFault[];
  /** Where a cell of a row begins; reckoned only when asked. */
  place(row: CsvRow, cell: number): Place;
}

/** Opens a CSV text: RFC 4180 with the given delimiter, any line breaks, strings only. */
export function openCsv(source: string, delimiter: string): Csv {
  const text = withLineFeeds(source);
  return {
    text,
    delimiter,
    read: (onRow) =>
      (text.includes('"') || delimiter.length !== 1 ? readQuoted : readPlain)(text, delimiter, onRow),
    place: placesOfCells(text, delimiter),
  };
}

const lineFeed = 10;

/**
 * Without a quote in the text a line is a row and its cells lie between the delimiters: nothing is left to parse. One
 * walk over the characters is twice as fast as splitting into lines and those into cells.
 */
function readPlain(
  text: string,
  delimiter: string,
  onRow: (row: CsvRow, isBroken: boolean) => void,
): CsvFault[] {
  const separator = delimiter.charCodeAt(0);
  let line = 1;
  let start = 0;
  let cellStart = 0;
  let cells: string[] = [];
  for (let at = 0; at <= text.length; at += 1) {
    const code = at === text.length ? lineFeed : text.charCodeAt(at);
    if (code === separator) {
      cells.push(text.slice(cellStart, at));
      cellStart = at + 1;
    } else if (code === lineFeed) {
      if (at > start) {
        cells.push(text.slice(cellStart, at));
        onRow({ cells, line, start }, false);
        cells = [];
      }
      line += 1;
      start = at + 1;
      cellStart = start;
    }
  }
  return [];
}

function readQuoted(
  text: string,
  delimiter: string,
  onRow: (row: CsvRow, isBroken: boolean) => void,
): CsvFault[] {
  const faults: CsvFault[] = [];
  let start = 0;
  let line = 1;
  const step = (result: Papa.ParseStepResult<string[][]>): void => {
    const cells = result.data[0] ?? [];
    const next = result.meta.cursor;
    for (const error of result.errors) {
      const kind = error.code === 'MissingQuotes' ? 'unterminated quote' : 'stray quote';
      // PapaParse gives the offset just after the opening quote.
      const place = placeAt(text, (error.index ?? start + 1) - 1);
      if (faults.at(-1)?.place.line !== place.line) faults.push({ kind, place });
    }
    if (cells.length > 1 || cells[0] !== '') onRow({ cells, line, start }, result.errors.length > 0);
    line += countLineFeeds(text, start, next);
    start = next;
  };
  // The parser itself, without PapaParse's outer layer: no guessing of delimiters, no typing, no renaming.
  const parser = new Papa.Parser({ delimiter, newline: '\n', quoteChar: '"', step: step as never });
  parser.parse(text, 0, false);
  return faults;
}

/**
 * Walks a row's text cell by cell, quotes heeded, up to the cell asked for. Where the last question was about the same
 * row and a cell before this one, it walks on from there, or a row of a million faulty cells would take for ever.
 */
function placesOfCells(text: string, delimiter: string): Csv['place'] {
  let at = { start: -1, cell: 0, offset: 0, line: 0, column: 1 };
  return (row, cell) => {
    if (at.start !== row.start || at.cell > cell) {
      at = { start: row.start, cell: 0, offset: row.start, line: row.line, column: 1 };
    }
    const from = at.offset;
    while (at.cell < cell) {
      const next = text.charAt(at.offset) === '"' ? afterQuoted(text, at.offset) : at.offset;
      const found = nextOnLine(text, delimiter, next);
      if (found === -1) break;
      at.cell += 1;
      at.offset = found + delimiter.length;
    }
    const feeds = countLineFeeds(text.slice(from, at.offset), 0, at.offset - from);
    at.line += feeds;
    at.column = feeds === 0 ? at.column + characters(text, from, at.offset) : columnAt(text, at.offset);
    return { line: at.line, column: at.column };
  };
}

function characters(text: string, start: number, end: number): number {
  return [...text.slice(start, end)].length;
}

/** The offset of the next delimiter, -1 where the line ends before it. */
function nextOnLine(text: string, delimiter: string, from: number): number {
  for (let at = from; at < text.length && text.charAt(at) !== '\n'; at += 1) {
    if (text.startsWith(delimiter, at)) return at;
  }
  return -1;
}

function afterQuoted(text: string, opening: number): number {
  let at = text.indexOf('"', opening + 1);
  while (at !== -1 && text.charAt(at + 1) === '"') at = text.indexOf('"', at + 2);
  return at === -1 ? text.length : at + 1;
}
