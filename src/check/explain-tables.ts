import type { Problem } from '../model/problem.ts';
import type { FolderFiles } from '../read/folder-files.ts';
import { companionForm, harvestForm } from './csv-form.ts';
import type { Metadata } from './facts.ts';
import { trimmed } from './number.ts';
import { readingColumns } from './read-readings.ts';
import type { Report } from './rule.ts';
import { reportColumnMoved } from './rules/column-moved.ts';
import { reportExchangedHeadings } from './rules/exchanged-headings.ts';
import { reportExchangedReadings } from './rules/reading-unlikely.ts';
import { reportWrittenOnce } from './rules/written-once.ts';
import { bytesOf, type Cells, cellsOf, withExchanged, withFilled, withMoved } from './table-edits.ts';

const tables = ['layout.csv', 'harvest.csv', 'readings.csv'] as const;

/** From so many faults on in one table, one slip that explains them is looked for; two do beside an empty cell. */
const several = 3;
const fewest = 2;
/** A slip explains them where it leaves at most this share of them in the folder. */
const mostLeft = 0.1;
/** So many rows are read anew, over all slips that are tried, before a table is too large for it. */
const mostRows = 40_000;

/** A slip of a whole column that may explain a table's faults, the table without it, and what is said of it. */
interface Slip {
  mended: Cells;
  /** The line in which a fault may be left: its cell was lost. */
  lost: number | null;
  /** A line with an empty cell that is at fault because of the slip; null where none is. */
  empty: number | null;
  tell: (report: Report) => void;
}

/**
 * Tells problems of a table that one slip of whole columns explains as that slip, in their place: two headings exchanged, a
 * column moved by a row, a column written in the first row of each run alone. Each is tried by checking the folder
 * without it, so that only what leaves nothing to find is said.
 *
 * @param problems is changed
 * @param check the problems of a folder with other tables
 */
export function explainTables(
  files: FolderFiles,
  problems: Problem[],
  metadata: Metadata,
  prefix: string,
  report: Report,
  check: (files: FolderFiles) => Problem[],
): void {
  let [left, now] = [problems, files];
  const told: ((report: Report) => void)[] = [];
  for (const file of tables) {
    const bytes = now.get(file);
    const own = (all: readonly Problem[]): Problem[] => all.filter((one) => one.file === prefix + file);
    const errors = own(left).filter(({ severity }) => severity === 'error');
    // Where the headings are at fault, the rows were not read.
    if (bytes === undefined || errors.some(({ line }) => line === 1)) continue;
    const form = file === 'harvest.csv' ? harvestForm(metadata) : companionForm(metadata, bytes);
    const isOdd = errors.length === 0 && own(left).some((one) => isUnlikely(one, metadata));
    const cells = errors.length > 0 || isOdd ? cellsOf(file, bytes, form) : null;
    if (cells === null) continue;
    const isAtFault = (line: number | null): boolean =>
      line !== null && errors.some((one) => one.line === line);
    const slips = isOdd
      ? exchangedReadings(cells)
      : slipsOf(file, cells, metadata).filter(
          ({ empty }) => errors.length >= several || (left.length >= fewest && isAtFault(empty)),
        );
    if (slips.length * cells.rows.length > mostRows) continue;
    const explaining = slips.flatMap((slip) => {
      const mended = new Map(now).set(file, bytesOf(slip.mended));
      const after = check(mended).filter(
        (one) => !own([one]).some(({ line }) => line !== null && line === slip.lost),
      );
      const isLeft = own(after).some(({ severity }) => isOdd || severity === 'error');
      return isLeft || after.length > left.length * mostLeft ? [] : [{ slip, mended, after }];
    });
    const evident = explaining.filter(({ slip }) => isAtFault(slip.empty));
    const likely = evident.length > 0 ? evident : explaining;
    const least = Math.min(...likely.map(({ after }) => after.length));
    const [best, other] = likely.filter(({ after }) => after.length === least);
    // Where two slips explain them, neither is said.
    if (best === undefined || other !== undefined) continue;
    told.push(best.slip.tell);
    [left, now] = [best.after, best.mended];
  }
  if (told.length === 0) return;
  problems.splice(0, problems.length, ...left);
  for (const tell of told) tell(report);
}

/** Readings that no solution has, which no error tells of; not where the grower lets them stand. */
function isUnlikely({ rule }: Problem, { draft }: Metadata): boolean {
  return rule === 'reading-unlikely' && !(draft.accepted ?? []).some((one) => one.rule === rule);
}

/** Headings of two columns of readings exchanged, which only their values tell. */
function exchangedReadings(cells: Cells): Slip[] {
  const [head] = cells.rows;
  const headings = head!.cells.map(trimmed);
  const columns = [...headings.keys()].filter((at) => readingColumns.some((name) => name === headings[at]));
  return columns.flatMap((column, at) =>
    columns.slice(at + 1).map((other) => ({
      mended: withExchanged(cells, column, other),
      lost: null,
      empty: null,
      tell: (report) => reportExchangedReadings(report, head!.line, [headings[column]!, headings[other]!]),
    })),
  );
}

function slipsOf(file: string, cells: Cells, metadata: Metadata): Slip[] {
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
      const names = [name, trimmed(headings[other]!)] as const;
      slips.push({
        mended: withExchanged(cells, column, other),
        lost: null,
        empty: null,
        tell: (report) => reportExchangedHeadings(report, file, head!.line, names),
      });
    }
    if (blanks[column] === rows.length || nameOf(column) === 'remark') continue;
    for (const by of [1, -1] as const) {
      const end = by === 1 ? 0 : rows.length - 1;
      if (!isBlank(end, column)) continue;
      const { line } = rows[end]!;
      const lost = rows[rows.length - 1 - end]!.line;
      slips.push({
        mended: withMoved(cells, column, by),
        lost,
        empty: line,
        tell: (report) => reportColumnMoved(report, file, { name, line, isLow: by === 1 }),
      });
    }
    // Only what tells of which plant, unit or day a row is: a value that is missing is not that of the row above.
    const isOfPlace = file === 'layout.csv' || ofPlace.has(nameOf(column));
    if (isOfPlace && blanks[column]! > 0 && !isBlank(0, column)) {
      const { line } = rows.find((_, at) => isBlank(at, column))!;
      slips.push({
        mended: withFilled(cells, column),
        lost: null,
        empty: line,
        tell: (report) => reportWrittenOnce(report, file, { name, line, blanks: blanks[column]! }),
      });
    }
  }
  return slips;
}

const ofPlace = new Set(['container', 'row', 'column', 'cut', 'date', 'plant']);
