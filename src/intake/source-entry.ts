import type { TrialMetadata } from '../model/trial.ts';
import { columnLetters, columnOfLetters } from './cell-name.ts';
import { useOfWords, wordsOfUse } from './column-words.ts';
import type { ColumnUse, Mapping } from './mapping.ts';

/** How trial.yaml remembers a table that was brought in. */
export type SourceEntry = NonNullable<TrialMetadata['sources']>[number];

/** A mapping as trial.yaml remembers it, with rows and columns as the spreadsheet names them. */
export function sourceEntry(file: string, sha256: string, mapping: Mapping): SourceEntry {
  const { sheet, isTurned, headings, lines, leftOut, uses, always, hasTitles, words, decimal, dates } =
    mapping;
  const line = isTurned ? columnLetters : numbered;
  const field = isTurned ? numbered : columnLetters;
  const range = ([first, last]: readonly [number, number]): string =>
    first === last ? line(first) : `${line(first)}-${line(last)}`;
  const columns = [...uses]
    .sort(([a], [b]) => a - b)
    .map(([at, use]) => [field(at), wordsOfUse(use)] as const);
  return {
    file,
    sha256,
    ...(sheet === '' ? {} : { sheet }),
    ...(isTurned ? { turned: true } : {}),
    headings: range(headings),
    rows: range(lines),
    ...(leftOut.length === 0 ? {} : { left_out: leftOut.map(line) }),
    columns: Object.fromEntries(columns),
    ...(Object.keys(always).length === 0 ? {} : { always: { ...always } }),
    ...(hasTitles ? { titles: true } : {}),
    ...(Object.keys(words).length === 0 ? {} : { words: { ...words } }),
    ...(decimal === '.' || decimal === null ? {} : { decimal }),
    ...(dates === null ? {} : { dates }),
  };
}

const numbered = (index: number): string => String(index + 1);

/** The mapping that an entry of trial.yaml says; null where its rows, columns or words cannot be understood. */
export function mappingOfEntry(entry: SourceEntry): Mapping | null {
  const isTurned = entry.turned === true;
  const headings = rangeOf(entry.headings, isTurned);
  const lines = rangeOf(entry.rows, isTurned);
  const leftOut = (entry.left_out ?? []).map((name) => lineOf(name, isTurned));
  const uses = new Map<number, ColumnUse>();
  for (const [name, words] of Object.entries(entry.columns)) {
    const field = lineOf(name, !isTurned);
    const use = useOfWords(words);
    if (field === null || use === null) return null;
    uses.set(field, use);
  }
  if (headings === null || lines === null || leftOut.includes(null)) return null;
  return {
    sheet: entry.sheet ?? '',
    isTurned,
    headings,
    lines,
    leftOut: leftOut.filter((line) => line !== null),
    uses,
    always: entry.always ?? {},
    hasTitles: entry.titles === true,
    words: entry.words ?? {},
    decimal: entry.decimal ?? '.',
    dates: entry.dates ?? null,
  };
}

/** A row's number or a column's letters, from 0; null for what is neither. */
export function lineOf(name: string, isLettered: boolean): number | null {
  if (isLettered) return columnOfLetters(name);
  return /^[1-9]\d{0,6}$/.test(name) ? Number(name) - 1 : null;
}

/** `4`, or `4-51`, from 0; null for what is no such range. */
export function rangeOf(text: string, isLettered: boolean): readonly [number, number] | null {
  const [from = '', to = from, ...more] = text.split('-').map((part) => part.trim());
  const [first, last] = [lineOf(from, isLettered), lineOf(to, isLettered)];
  return more.length > 0 || first === null || last === null || last < first ? null : [first, last];
}
