import { openCsv } from '../read/csv.ts';
import type { CsvForm } from './csv-form.ts';
import { textOf } from './text-file.ts';

/** A table of cells that can be changed and written back: the headings first, each row with its line. */
export interface Cells {
  rows: readonly { line: number; cells: readonly string[] }[];
  delimiter: string;
}

/** The cells of a CSV file; null where its form is at fault, or a row has another number of cells than the headings. */
export function cellsOf(file: string, bytes: Uint8Array, { delimiter }: CsvForm): Cells | null {
  const text = textOf(file, bytes, () => undefined);
  if (text === null) return null;
  const rows: { line: number; cells: readonly string[] }[] = [];
  const faults = openCsv(text, delimiter).read(({ line, cells }) => rows.push({ line, cells }));
  const isEven = rows.every(({ cells }) => cells.length === rows[0]?.cells.length);
  return faults.length > 0 || rows.length < 2 || !isEven ? null : { rows, delimiter };
}

/** The bytes of a CSV file with these cells, each row in its line. */
export function bytesOf({ rows, delimiter }: Cells): Uint8Array {
  let line = 1;
  let text = '';
  for (const row of rows) {
    text += '\n'.repeat(Math.max(0, row.line - line));
    line = Math.max(line, row.line);
    const written = row.cells.map((cell) =>
      /["\n]/.test(cell) || cell.includes(delimiter) ? quoted(cell) : cell,
    );
    text += written.join(delimiter);
    line += written.join('').split('\n').length - 1;
  }
  return new TextEncoder().encode(`${text}\n`);
}

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;

/** With the headings of two columns exchanged. */
export function withExchanged({ rows, delimiter }: Cells, one: number, other: number): Cells {
  const [head, ...rest] = rows;
  const cells = head!.cells.with(one, head!.cells[other]!).with(other, head!.cells[one]!);
  return { rows: [{ ...head!, cells }, ...rest], delimiter };
}

/** With the cells of a column each a row higher (`by` 1) or lower (-1); the headings stay. A row left with nothing goes. */
export function withMoved({ rows, delimiter }: Cells, column: number, by: 1 | -1): Cells {
  const [head, ...rest] = rows;
  const moved = rest.map((row, at) => ({
    ...row,
    cells: row.cells.with(column, rest[at + by]?.cells[column] ?? ''),
  }));
  const kept = moved.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  return { rows: [head!, ...kept], delimiter };
}

/** With each empty cell of a column filled from the one above. */
export function withFilled({ rows, delimiter }: Cells, column: number): Cells {
  const [head, ...rest] = rows;
  let above = '';
  const filled = rest.map((row) => {
    const own = row.cells[column]!;
    if (own.trim() !== '') above = own;
    return { ...row, cells: row.cells.with(column, above) };
  });
  return { rows: [head!, ...filled], delimiter };
}

/** With all cells of a column empty. */
export function withEmptied({ rows, delimiter }: Cells, column: number): Cells {
  const [head, ...rest] = rows;
  return { rows: [head!, ...rest.map((row) => ({ ...row, cells: row.cells.with(column, '') }))], delimiter };
}
