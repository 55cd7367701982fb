import type { Container } from '../model/trial.ts';
import type { CsvRow } from '../read/csv.ts';
import { parseWhole, trimmed } from './number.ts';
import type { Report } from './rule.ts';
import { reportNotAWholeNumber } from './rules/not-a-whole-number.ts';
import { reportExchanged, reportOffTheGrid } from './rules/position-off-the-grid.ts';
import { reportUnknownContainer } from './rules/unknown-container.ts';
import type { Table } from './table.ts';

export interface Spot {
  container: string;
  row: number;
  column: number;
}

/**
 * Reads a row's container, row and column; null where they name no place, which is then reported. What is given back
 * is filled anew for the next row.
 */
export type SpotReader = (row: CsvRow) => Spot | null;

/** A reader of positions for one table; `isWhole` is false where not all containers are known, and
 * `onLost` hears of a row that could not be placed. */
export function spotReader(
  table: Table,
  containers: ReadonlyMap<string, Container>,
  isWhole: boolean,
  report: Report,
  onLost: (container: string) => void = () => undefined,
): SpotReader {
  const at = (name: string): number => table.index.get(name) ?? -1;
  const known = [...containers.keys()];
  const [containerAt, rowAt, columnAt] = [at('container'), at('row'), at('column')];
  const spot: Spot = { container: '', row: 0, column: 0 };
  let isExchanged: boolean | null = null;
  return (row) => {
    const { cells } = row;
    const id = trimmed(cells[containerAt] ?? '');
    const container = containers.get(id);
    if (container === undefined) {
      if (isWhole) reportUnknownContainer(report, table, row, id, known);
      onLost(id);
      return null;
    }
    const rowNumber = readCount(table, row, 'row', trimmed(cells[rowAt] ?? ''), report);
    const columnNumber = readCount(table, row, 'column', trimmed(cells[columnAt] ?? ''), report);
    if (rowNumber === null || columnNumber === null) {
      onLost(id);
      return null;
    }
    if (rowNumber > container.rows || columnNumber > container.columns) {
      if (isExchanged === null) {
        isExchanged = areExchanged(table, containers);
        // Those before it were placed wrongly too, so that no container is sure.
        if (isExchanged) for (const each of known) onLost(each);
        if (isExchanged) reportExchanged(report, table, row, container, rowNumber);
      }
      if (isExchanged) return null;
      reportOffTheGrid(report, table, row, container, { row: rowNumber, column: columnNumber });
      onLost(id);
      return null;
    }
    // Its own id, not the cell: the text of the file need not be kept for it.
    spot.container = container.id;
    spot.row = rowNumber;
    spot.column = columnNumber;
    return spot;
  };
}

/** Of a table with rows off the grid: true where it is more than one, and every row lies on it with row for column. */
function areExchanged(table: Table, containers: ReadonlyMap<string, Container>): boolean {
  const at = (name: string): number => table.index.get(name) ?? -1;
  const [containerAt, rowAt, columnAt] = [at('container'), at('row'), at('column')];
  let off = 0;
  let fits = true;
  table.csv.read(({ cells }) => {
    const container = containers.get(trimmed(cells[containerAt] ?? ''));
    const row = parseWhole(trimmed(cells[rowAt] ?? ''));
    const column = parseWhole(trimmed(cells[columnAt] ?? ''));
    if (container === undefined || row === null || column === null) return;
    if (row > container.rows || column > container.columns) off += 1;
    if (column > container.rows || row > container.columns) fits = false;
  });
  return fits && off > 1;
}

/** A whole number from 1, or null with the reason reported. */
export function readCount(
  table: Table,
  row: CsvRow,
  name: string,
  text: string,
  report: Report,
): number | null {
  const value = parseWhole(text);
  if (value !== null && value >= 1) return value;
  reportNotAWholeNumber(report, table, row, name, text);
  return null;
}
