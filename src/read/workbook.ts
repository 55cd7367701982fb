import { read, type CellObject, type WorkSheet } from '@e965/xlsx';
import type { Sheet, Workbook, WorkbookCell } from '../model/workbook.ts';
import { openCsv } from './csv.ts';
import { delimiterIn } from './delimiter.ts';
import { textOfBytes } from './text-of-bytes.ts';
import { unzip } from './unzip.ts';
import { zipEntries } from './zip-entries.ts';

/** Why a spreadsheet could not be read. */
export type WorkbookFault = 'no spreadsheet' | 'locked' | 'too large' | 'empty' | 'open quote';

/** Unpacked, a spreadsheet of more than this is no harvest. */
export const most = { bytes: 200 * 1024 * 1024, cells: 500_000 };

/**
 * A spreadsheet file: Office Open XML (.xlsx), OpenDocument (.ods) or delimited text. What it is, its bytes say,
 * not its name.
 */
export function readWorkbook(bytes: Uint8Array): Workbook | WorkbookFault {
  if (bytes.length === 0) return 'empty';
  if (isZip(bytes)) return readPacked(bytes);
  // The older binary formats, and a workbook locked with a password, are compound files.
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) return 'locked';
  return readDelimited(bytes);
}

const startsWith = (bytes: Uint8Array, first: readonly number[]): boolean =>
  first.every((byte, index) => bytes[index] === byte);

const isZip = (bytes: Uint8Array): boolean => startsWith(bytes, [0x50, 0x4b]);

function readPacked(bytes: Uint8Array): Workbook | WorkbookFault {
  const entries = zipEntries(bytes);
  if (entries === null) return 'no spreadsheet';
  if (entries.some(({ isLocked }) => isLocked)) return 'locked';
  if (entries.reduce((sum, { size }) => sum + size, 0) > most.bytes) return 'too large';
  const paths = new Set(entries.map(({ path }) => path));
  if (!paths.has('xl/workbook.xml') && !paths.has('content.xml')) return 'no spreadsheet';
  const isXlsx = paths.has('xl/workbook.xml');
  try {
    // A view of its own: the library writes marks onto the array that it is given.
    const {
      SheetNames,
      Sheets,
      Workbook: book,
    } = read(bytes.subarray(), {
      type: 'array',
      dense: true,
      cellDates: true,
      cellHTML: false,
      cellNF: true,
      // Without it hidden rows and columns are not told, nor formulas saved without what they came to.
      cellStyles: isXlsx,
      UTC: true,
    });
    const isHidden = (index: number): boolean => (book?.Sheets?.[index]?.Hidden ?? 0) > 0;
    const sheets = SheetNames.map((name, index) =>
      sheetOf(isXlsx ? name : unescaped(name), Sheets[name]!, isHidden(index)),
    );
    const cells = sheets.reduce((sum, { rows }) => sum + rows.reduce((all, row) => all + row.length, 0), 0);
    if (cells > most.cells) return 'too large';
    return { sheets, isText: false, encoding: null, covered: coveredTexts(bytes) };
  } catch {
    return 'no spreadsheet';
  }
}

function sheetOf(name: string, sheet: WorkSheet, isWhole: boolean): Sheet {
  const rows: (readonly (CellObject | undefined)[])[] = sheet['!data'] ?? [];
  const merged = (sheet['!merges'] ?? []).map(({ s, e }) => ({
    top: s.r,
    left: s.c,
    bottom: e.r,
    right: e.c,
  }));
  return {
    name,
    rows: withoutEnd(Array.from(withoutEnd(rows), (row) => withoutEnd(Array.from(row ?? [], cellOf)))),
    merged,
    hidden: { rows: hiddenOf(sheet['!rows']), columns: hiddenOf(sheet['!cols']), isWhole },
  };
}

/** The library leaves the names of an OpenDocument's sheets as they stand in the file. */
const unescaped = (name: string): string =>
  name
    .replaceAll(/&#(x?)([0-9a-f]{1,6});/gi, (_, hex: string, digits: string) =>
      String.fromCodePoint(Number.parseInt(digits, hex === '' ? 10 : 16)),
    )
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');

/** OpenDocument keeps what lies hidden under joined cells in cells of a kind that the library passes over. */
function coveredTexts(bytes: Uint8Array): string[] {
  const content = unzipOnly(bytes, 'content.xml');
  if (content === null) return [];
  const covered = /<table:covered-table-cell\b[^>]*[^/]>([\s\S]*?)<\/table:covered-table-cell>/g;
  return [...content.matchAll(covered)]
    .map(([, inner = '']) =>
      inner
        .replaceAll(/<[^>]*>/g, ' ')
        .replaceAll(/\s+/g, ' ')
        .trim(),
    )
    .filter((text) => text !== '');
}

function unzipOnly(bytes: Uint8Array, path: string): string | null {
  const files = unzip(bytes);
  const file = typeof files === 'string' ? undefined : files.get(path);
  return file instanceof Uint8Array ? new TextDecoder().decode(file) : null;
}

/** Sheets may be formatted to their last row and column: what is empty at the end is left out. */
function withoutEnd<T>(given: readonly T[]): T[] {
  let length = given.length;
  while (length > 0 && isEmpty(given[length - 1])) length -= 1;
  return given.slice(0, length);
}

const isEmpty = (one: unknown): boolean =>
  one === undefined || one === null || (Array.isArray(one) && one.every(isEmpty));

const hiddenOf = (list: readonly ({ hidden?: boolean } | undefined)[] | undefined): number[] =>
  Array.from(list ?? [], (one, index) => (one?.hidden === true ? index : -1)).filter((index) => index >= 0);

function cellOf(cell: CellObject | undefined): WorkbookCell | null {
  if (cell === undefined) return null;
  const note = (cell.c ?? []).map(({ t = '' }) => t.trim()).filter((text) => text !== '');
  const { text, kind } = valueOf(cell);
  if (text === '' && note.length === 0) return null;
  const shown = typeof cell.w === 'string' && kind === 'number' && cell.w !== text ? cell.w.trim() : null;
  return {
    text,
    kind,
    shown,
    isFormula: cell.f !== undefined,
    note: note.length === 0 ? null : note.join(' '),
  };
}

function valueOf({ t, v, w, f }: CellObject): Pick<WorkbookCell, 'text' | 'kind'> {
  // Some programs save a formula without what it came to: nothing is known of it then.
  if (f !== undefined && (t === 'z' || v === undefined || v === '')) return { text: `=${f}`, kind: 'fault' };
  if (t === 'n' && typeof v === 'number') return { text: digitsOf(v), kind: 'number' };
  if (t === 'd' && v instanceof Date) return { text: dayOf(v), kind: 'date' };
  if (t === 'b') return { text: v === true ? 'TRUE' : 'FALSE', kind: 'truth' };
  if (t === 'e') return { text: w ?? 'error', kind: 'fault' };
  return { text: typeof v === 'string' ? v.trim() : '', kind: 'text' };
}

/** The 15 digits that a spreadsheet shows of a number; what lies behind them is the rounding of its sums. */
export function digitsOf(value: number): string {
  const text = String(Number(value.toPrecision(15)));
  return text.includes('e') ? value.toFixed(15).replace(/\.?0+$/, '') : text;
}

/** Year-month-day, with the time behind it where there is one. */
function dayOf(moment: Date): string {
  const iso = Number.isNaN(moment.getTime()) ? '' : moment.toISOString();
  return iso.endsWith('T00:00:00.000Z') ? iso.slice(0, 10) : iso.slice(0, 16).replace('T', ' ');
}

function readDelimited(bytes: Uint8Array): Workbook | WorkbookFault {
  const { text, encoding } = textOfBytes(bytes);
  // Web pages are saved as .xls by some programs, and letters or books as text.
  if (text.includes('\0') || /^\s*(?:<|%PDF|\{\\rtf)/.test(text)) return 'no spreadsheet';
  const csv = openCsv(text, delimiterIn(text));
  const rows: (WorkbookCell | null)[][] = [];
  let count = 0;
  const faults = csv.read(({ cells, line }) => {
    while (rows.length < line - 1) rows.push([]);
    rows.push(cells.map(plainCell));
    count += cells.length;
  });
  if (faults.some(({ kind }) => kind === 'unterminated quote')) return 'open quote';
  if (count > most.cells) return 'too large';
  return count === 0
    ? 'empty'
    : {
        sheets: [{ name: '', rows, merged: [], hidden: { rows: [], columns: [], isWhole: false } }],
        isText: true,
        encoding,
        covered: [],
      };
}

const isDay = (text: string): boolean => /^\d{4}-\d\d-\d\d$/.test(text);

function plainCell(given: string): WorkbookCell | null {
  const text = given.trim();
  if (text === '') return null;
  // What a number is depends on the decimal mark, which the file does not say.
  return { text, kind: isDay(text) ? 'date' : 'text', shown: null, isFormula: false, note: null };
}
