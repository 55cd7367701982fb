import type { Sheet, WorkbookCell } from '../model/workbook.ts';
import { cellName, columnLetters } from './cell-name.ts';

/** A cell as a table sees it, and where in the sheet it stands. */
export interface GridCell extends WorkbookCell {
  /** Row and column in the sheet from 0; of a joined cell, its first. */
  row: number;
  column: number;
  /** How many lines and fields it is joined over; 1 and 1 for a plain cell. */
  lines: number;
  fields: number;
}

/** A sheet with each joined cell standing in every cell that it covers, turned where each plant has a column. */
export interface Grid {
  lines: readonly (readonly (GridCell | null)[])[];
  /** Cells that lie hidden under a joined one and hold something of their own. */
  covered: readonly GridCell[];
  /** The number of fields. */
  width: number;
  isTurned: boolean;
  /** A line as the spreadsheet numbers or letters it. */
  lineName(line: number): string;
  fieldName(field: number): string;
  /** The sheet's row and column of a place in the grid. */
  place(line: number, field: number): { row: number; column: number };
}

/** The grid of a sheet. */
export function gridOf(sheet: Sheet, isTurned: boolean): Grid {
  const rows: (GridCell | null)[][] = sheet.rows.map((cells, row) =>
    cells.map((cell, column) => (cell === null ? null : { ...cell, row, column, lines: 1, fields: 1 })),
  );
  const covered = spread(rows, sheet, isTurned);
  const width = rows.reduce((widest, row) => Math.max(widest, row.length), 0);
  const lines = isTurned
    ? Array.from({ length: width }, (_, column) => rows.map((row) => row[column] ?? null))
    : rows;
  const number = (index: number): string => String(index + 1);
  return {
    lines,
    covered,
    width: isTurned ? rows.length : width,
    isTurned,
    lineName: isTurned ? columnLetters : number,
    fieldName: isTurned ? number : columnLetters,
    place: (line, field) => (isTurned ? { row: field, column: line } : { row: line, column: field }),
  };
}

/** Joined cells may reach to the sheet's end: they are spread no further than something is written. */
function spread(rows: (GridCell | null)[][], { merged }: Sheet, isTurned: boolean): GridCell[] {
  const covered: GridCell[] = [];
  const lastColumn = rows.reduce((widest, row) => Math.max(widest, row.length), 1) - 1;
  for (const area of merged) {
    const cell = rows[area.top]?.[area.left] ?? null;
    const bottom = Math.min(area.bottom, rows.length - 1);
    const right = Math.min(area.right, lastColumn);
    const [down, across] = [bottom - area.top + 1, right - area.left + 1];
    const spans = { lines: isTurned ? across : down, fields: isTurned ? down : across };
    const joined = cell === null ? null : { ...cell, ...spans };
    for (let row = area.top; row <= bottom; row += 1) {
      const cells = rows[row]!;
      while (cells.length <= right) cells.push(null);
      for (let column = area.left; column <= right; column += 1) {
        const under = cells[column] ?? null;
        if (under !== null && (row > area.top || column > area.left)) covered.push(under);
        cells[column] = joined;
      }
    }
  }
  return covered;
}

/** Every cell of a grid that something is written in or fastened to, each joined one once. */
export function* cellsOf({ lines }: Grid): Generator<GridCell> {
  const seen = new Set<string>();
  for (const line of lines) {
    for (const cell of line) {
      if (cell === null) continue;
      const name = cellName(cell.row, cell.column);
      if (seen.has(name)) continue;
      seen.add(name);
      yield cell;
    }
  }
}
