import { harvestForm } from './csv-form.ts';
import type { Metadata } from './facts.ts';
import { trimmed } from './number.ts';
import { readingColumns } from './read-readings.ts';
import type { Report } from './rule.ts';
import { reportColumnMoved } from './rules/column-moved.ts';
import { reportExchangedHeadings } from './rules/exchanged-headings.ts';
import { reportExchangedReadings } from './rules/reading-unlikely.ts';
import { reportWrittenOnce } from './rules/written-once.ts';
import { type Cells, withEmptied, withExchanged, withFilled, withMoved } from './table-edits.ts';

/** A slip of a whole column that may explain a table's faults, the table without it, and what is said of it. */
export interface Slip {
  mended: Cells;
  /** The line in which a fault may be left: its cell was lost. */
  lost: number | null;
  /** Tables that the slip leaves at fault, or a fault of one column alone is taken for it. */
  notAlone: readonly Cells[];
  /** A line with an empty cell that is at fault because of the slip; null where none is. */
  empty: number | null;
  tell: (report: Report) => void;
}

/** Headings of two columns of readings exchanged, which only their values tell. */
export function exchangedReadings(cells: Cells): Slip[] {
  const [head] = cells.rows;
  const headings = head!.cells.map(trimmed);
  const columns = [...headings.keys()].filter((at) => readingColumns.some((name) => name === headings[at]));
  return columns.flatMap((column, at) =>
    columns
      .slice(at + 1)
      .flatMap((other) =>
        exchanged(cells, column, other, (report, names) =>
          reportExchangedReadings(report, head!.line, names),
        ),
      ),
  );
}

/** So many cells of a column are empty at least, where it was written once for all of a run. */
const fewestBlanks = 3;
/** Columns of which the one's values are likely beneath the other's heading and hardly the other way round. */
const tellApart: ReadonlySet<string> = new Set(['ec', 'ph']);
/** Columns in which anything may stand. */
const ofText: ReadonlySet<string> = new Set(['remark', 'status']);

/**
 * Two headings exchanged, where the values do not forbid it. A column that is wrong by itself would fit beneath many a
 * heading: both have to be at fault, unless numbers stand where text belongs.
 */
function exchanged(
  cells: Cells,
  column: number,
  other: number,
  tell: (report: Report, names: readonly [string, string]) => void,
): Slip[] {
  const [head, ...rows] = cells.rows;
  const names = [trimmed(head!.cells[column]!), trimmed(head!.cells[other]!)] as const;
  const valuesOf = (at: number): string[] => rows.map((row) => row.cells[at]!.trim());
  const [ofOne, ofOther] = [valuesOf(column), valuesOf(other)];
  const isNumbers = (values: readonly string[]): boolean =>
    values.filter((value) => /^\d+(?:[.,]\d+)?$/.test(value)).length * 2 > values.length;
  const isEvident =
    names.every((name) => tellApart.has(name)) ||
    (ofText.has(names[0]) && isNumbers(ofOne)) ||
    (ofText.has(names[1]) && isNumbers(ofOther));
  const isAlike = ofOne.every((value, at) => value === ofOther[at] || Number(value) === Number(ofOther[at]));
  const isEmpty = [ofOne, ofOther].some((values) => values.every((value) => value === ''));
  if (isAlike || (isEmpty && !isEvident)) return [];
  return [
    {
      mended: withExchanged(cells, column, other),
      notAlone: isEvident ? [] : [withEmptied(cells, column), withEmptied(cells, other)],
      lost: null,
      empty: null,
      tell: (report) => tell(report, names),
    },
  ];
}

/** Every slip of whole columns that may explain the faults of a table. */
export function slipsOf(file: string, cells: Cells, metadata: Metadata): Slip[] {
  const [head, ...rows] = cells.rows;
  const headings = head!.cells;
  const isBlank = (row: number, column: number): boolean => rows[row]!.cells[column]!.trim() === '';
  const blanks = headings.map((_, column) => rows.filter((_row, at) => isBlank(at, column)).length);
  const own = new Map([...harvestForm(metadata).headings].map(([name, heading]) => [heading, name]));
  const nameOf = (column: number): string => {
    const heading = trimmed(headings[column]!);
    return own.get(heading) ?? heading;
  };
  const slips: Slip[] = [];
  for (const [column, heading] of headings.entries()) {
    const name = trimmed(heading);
    for (let other = column + 1; other < headings.length; other += 1) {
      const tell = (report: Report, names: readonly [string, string]): void =>
        reportExchangedHeadings(report, file, head!.line, names);
      slips.push(...exchanged(cells, column, other, tell));
    }
    if (blanks[column] === rows.length || nameOf(column) === 'remark') continue;
    for (const by of [1, -1] as const) {
      const end = by === 1 ? 0 : rows.length - 1;
      if (!isBlank(end, column)) continue;
      const { line } = rows[end]!;
      const lost = rows[rows.length - 1 - end]!.line;
      slips.push({
        mended: withMoved(cells, column, by),
        notAlone: [],
        lost,
        empty: line,
        tell: (report) => reportColumnMoved(report, file, { name, line, isLow: by === 1 }),
      });
    }
    // Only what tells of which plant, unit or day a row is: a value that is missing is not that of the row above.
    const isOfPlace = file === 'layout.csv' || ofPlace.has(nameOf(column));
    if (isOfPlace && blanks[column]! >= fewestBlanks && !isBlank(0, column)) {
      const { line } = rows.find((_, at) => isBlank(at, column))!;
      slips.push({
        mended: withFilled(cells, column),
        notAlone: [],
        lost: null,
        empty: line,
        tell: (report) => reportWrittenOnce(report, file, { name, line, blanks: blanks[column]! }),
      });
    }
  }
  return slips;
}

const ofPlace = new Set(['container', 'row', 'column', 'cut', 'date', 'plant']);
