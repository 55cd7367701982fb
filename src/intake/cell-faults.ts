/** Cells beside the values that say nothing that can be used. */
import { showText } from '../check/show-value.ts';
import { say } from '../model/say.ts';
import type { GridCell } from './grid.ts';
import type { ColumnUse } from './mapping.ts';
import type { TableReading } from './table-reading.ts';

interface Line {
  faulty: Set<string>;
}

export function faultOfFormula(table: TableReading, said: Line, { is }: ColumnUse, cell: GridCell): void {
  table.use(cell, is);
  said.faulty.add(is);
  const message = say('{found} is the fault of a formula; mend the formula, or type the number.', {
    found: showText(cell.text),
  });
  table.fault('spreadsheet-value', cell, message, cell.text);
}

/** A cell joined over columns of different uses says one thing where several are asked for. */
export function coversOthers({ mapping, grid }: TableReading, cell: GridCell, use: ColumnUse): boolean {
  if (cell.fields === 1) return false;
  const first = grid.isTurned ? cell.row : cell.column;
  return [...mapping.uses].some(
    ([field, { is }]) => field >= first && field < first + cell.fields && is !== use.is,
  );
}

export function faultOfSpread(table: TableReading, said: Line, { is }: ColumnUse, cell: GridCell): void {
  table.use(cell, is);
  said.faulty.add(is);
  if (table.joined.has(`${cell.row} ${cell.column}`)) return;
  table.joined.add(`${cell.row} ${cell.column}`);
  const message = say('{found} stands in a cell that is joined over columns of different kinds; part it.', {
    found: showText(cell.text),
  });
  table.fault('spreadsheet-joined', cell, message, cell.text);
}
