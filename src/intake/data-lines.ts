import type { Grid, GridCell } from './grid.ts';
import { isContainerTitle } from './container-named.ts';
import type { KnownTrial } from './known.ts';
import type { ColumnUse } from './mapping.ts';
import { plainWords } from './plain-words.ts';

/** Which lines of a table are data. */
export interface DataLines {
  lines: readonly [number, number];
  leftOut: readonly number[];
  hasTitles: boolean;
}

const sums =
  /^(?:grand |sub)?(?:total|totals|sum|sums|mean|means|average|averages|avg|median|suma|media|promedio|sd|se|cv|stdev|minimum|maximum|min|max|count)\b/;

/** The lines from the headings down to the last that has a place; totals in between are left out. Null for none. */
export function dataLines(
  grid: Grid,
  headings: { first: number; last: number },
  uses: ReadonlyMap<number, ColumnUse>,
  known: KnownTrial,
): DataLines | null {
  const fields = fieldsOf(uses, known);
  const has = (line: number, some: readonly number[]): boolean =>
    some.some((field) => (grid.lines[line]?.[field]?.text ?? '') !== '');
  const hasPlace = (line: number): boolean => fields.place.length === 0 || has(line, fields.place);
  const leftOut: number[] = [];
  let last = -1;
  let titles: number[] = [];
  for (let line = headings.last + 1; line < grid.lines.length; line += 1) {
    const cells = ownCells(grid, line);
    if (cells.length === 0) continue;
    if (isTitle(cells, known)) titles.push(line);
    else if (isSum(cells, fields, line, grid)) leftOut.push(line);
    else if (has(line, fields.values) && hasPlace(line)) last = line;
  }
  if (last < 0) return null;
  titles = titles.filter((line) => line < last);
  const above = titleAbove(grid, headings.first, known);
  const hasTitles = !fields.hasContainer && (titles.length > 0 || above !== null);
  const first = hasTitles && above !== null ? above : headings.last + 1;
  return { lines: [first, last], leftOut: leftOut.filter((line) => line < last), hasTitles };
}

interface Fields {
  place: number[];
  values: number[];
  hasContainer: boolean;
}

function fieldsOf(uses: ReadonlyMap<number, ColumnUse>, known: KnownTrial): Fields {
  const of = (names: readonly string[]): number[] =>
    [...uses].filter(([, { is }]) => names.includes(is)).map(([field]) => field);
  const place = of(['row', 'column', 'place']);
  return {
    place: place.length > 0 ? place : of(['plant']),
    values: of(known.variables.map(({ id }) => id)),
    hasContainer:
      of(['container']).length > 0 || [...uses.values()].some(({ as }) => as === 'container-row-column'),
  };
}

/** The cells of a line that have something written, a joined one once. */
export function ownCells(grid: Grid, line: number): GridCell[] {
  const cells = (grid.lines[line] ?? []).filter(
    (cell): cell is GridCell => cell !== null && cell.text !== '',
  );
  return cells.filter(
    (cell, index) =>
      cells.findIndex(({ row, column }) => row === cell.row && column === cell.column) === index,
  );
}

/** Lines that are the headings themselves or say them again, as a table does that is continued on another page. */
export function headingsAgain(
  grid: Grid,
  heading: number,
  uses: ReadonlyMap<number, ColumnUse>,
  [first, last]: readonly [number, number],
): number[] {
  const fields = [...uses.keys()];
  const text = (line: number, field: number): string => grid.lines[line]?.[field]?.text ?? '';
  return Array.from({ length: last - first + 1 }, (_, index) => first + index).filter(
    (line) =>
      fields.length > 1 &&
      fields.every((field) => text(line, field) === text(heading, field)) &&
      fields.some((field) => text(line, field) !== ''),
  );
}

/** A line with nothing but the name of a container. */
export function isTitle(cells: readonly GridCell[], known: KnownTrial): boolean {
  const [only, ...more] = cells;
  return only !== undefined && more.length === 0 && only.lines === 1 && isContainerTitle(only.text, known);
}

function titleAbove(grid: Grid, first: number, known: KnownTrial): number | null {
  for (let line = first - 1; line >= 0; line -= 1) {
    const cells = ownCells(grid, line);
    if (cells.length > 0) return isTitle(cells, known) ? line : null;
  }
  return null;
}

/** A line that sums up others: it says so, or all its values are formulas and it has no place of its own. */
function isSum(cells: readonly GridCell[], fields: Fields, line: number, grid: Grid): boolean {
  const first = cells[0];
  if (first !== undefined && first.kind === 'text' && sums.test(plainWords(first.text))) return true;
  const values = fields.values.flatMap((field) => grid.lines[line]?.[field] ?? []);
  const places = fields.place.flatMap((field) => grid.lines[line]?.[field] ?? []);
  return values.length > 0 && places.length === 0 && values.every(({ isFormula }) => isFormula);
}
