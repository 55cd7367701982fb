import { say } from '../model/say.ts';
import type { Sheet, Workbook } from '../model/workbook.ts';
import { cellName } from './cell-name.ts';
import { cellInWords } from './intake-problem.ts';
import { cellsOf, gridOf, type Grid, type GridCell } from './grid.ts';
import type { Mapping } from './mapping.ts';

/** A cell that was not used, and why. */
export interface NotUsed {
  /** As `Harvest!D7`. */
  cell: string;
  text: string;
  why: string;
}

/** A table that was read, and the names of the cells whose text or note was used. */
export interface ReadTable {
  mapping: Mapping;
  used: ReadonlyMap<string, string>;
  notes: ReadonlySet<string>;
}

/**
 * Every cell of a workbook that something is written in and that was not used, sheet by sheet.
 *
 * @param tables by sheet
 */
export function cellsNotUsed({ sheets }: Workbook, tables: ReadonlyMap<string, ReadTable>): NotUsed[] {
  return sheets.flatMap((sheet) => {
    const table = tables.get(sheet.name);
    const grid = gridOf(sheet, table?.mapping.isTurned ?? false);
    const covered = grid.covered.map((cell) => ({
      cell: nameOf(sheet, cell),
      text: textOf(cell),
      why: say('it lies hidden under a joined cell'),
    }));
    const open = [...cellsOf(grid)].flatMap((cell) => {
      if (table?.used.has(cellName(cell.row, cell.column)) === true) {
        // A cell may be used, and the note fastened to it not.
        const isKept = cell.note === null || table.notes.has(cellName(cell.row, cell.column));
        return isKept
          ? []
          : [{ cell: nameOf(sheet, cell), text: cell.note ?? '', why: say('a note on a heading or title') }];
      }
      if (cell.text === '' && table?.notes.has(cellName(cell.row, cell.column)) === true) return [];
      const why = table === undefined ? say('its sheet is not used') : reason(grid, table.mapping, cell);
      return [{ cell: nameOf(sheet, cell), text: textOf(cell), why }];
    });
    return [...open, ...covered];
  });
}

const nameOf = ({ name }: Sheet, { row, column }: GridCell): string =>
  cellInWords({ file: '', sheet: name, row, column });

const textOf = ({ text, note }: GridCell): string =>
  note === null ? text : text === '' ? note : `${text} (${note})`;

function reason({ isTurned }: Grid, mapping: Mapping, { row, column, text }: GridCell): string {
  const [line, field] = isTurned ? [column, row] : [row, column];
  const { headings, lines, leftOut, uses } = mapping;
  if (line < Math.min(headings[0], lines[0])) return say('above the table');
  if (line > lines[1]) {
    const isAmongWeights = uses.get(field)?.unit !== undefined && /^\d/.test(text);
    return isAmongWeights
      ? say('below the table, though it stands in a column of weights')
      : say('below the table');
  }
  if (leftOut.includes(line)) return say('its row is left out, as a total is');
  const use = uses.get(field);
  if (use === undefined || use.is === 'nothing') return say('its column is not used');
  return say('its row has no weight, and nothing else to keep');
}
