import { statusInWords } from './cell-value.ts';
import type { Grid, GridCell } from './grid.ts';
import { containerNamed, isContainerTitle, isNameOnly, saysContainer } from './container-named.ts';
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

/**
 * The lines from the headings down to the last that has a value; totals in between are left out. A number without a
 * place counts, so that a weight whose place was forgotten is asked about. Null for none.
 */
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
    if (isTitle(cells, known, isHeadingNext(grid, headings.last, uses, line))) titles.push(line);
    else if (isSum(cells, fields, line, grid, known)) leftOut.push(line);
    else if (has(line, fields.values) && hasPlace(line)) last = line;
    else if (fields.said.some((field) => saysOfPlant(grid.lines[line]?.[field] ?? null))) last = line;
    else if (isPlaced(grid, line, fields)) last = line;
  }
  if (last < 0) return null;
  titles = titles.filter((line) => line < last);
  const above = titleAbove(grid, headings.first, known);
  const hasTitles = !fields.hasContainer && (titles.length > 0 || above !== null);
  const first = hasTitles && above !== null ? above : headings.last + 1;
  return { lines: [first, last], leftOut: leftOut.filter((line) => line < last), hasTitles };
}

/** Numbers and words such as `dead` are of a plant, wherever they stand. */
const saysOfPlant = (cell: GridCell | null): boolean =>
  cell !== null &&
  !cell.isFormula &&
  (cell.kind === 'number' || /^\d/.test(cell.text) || statusInWords(cell.text) !== null);

/** A plant without a weight may be the last of a table: its place is whole, and no sentence beneath it. */
function isPlaced(grid: Grid, line: number, { place }: Fields): boolean {
  const texts = place.map((field) => grid.lines[line]?.[field]?.text ?? '');
  return texts.length > 0 && texts.every((text) => /^(?:\p{L}|(?=.*\d).{1,16})$/u.test(text));
}

interface Fields {
  place: number[];
  values: number[];
  /** Values and statuses. */
  said: number[];
  hasContainer: boolean;
}

function fieldsOf(uses: ReadonlyMap<number, ColumnUse>, known: KnownTrial): Fields {
  const of = (names: readonly string[]): number[] =>
    [...uses].filter(([, { is }]) => names.includes(is)).map(([field]) => field);
  const place = of(['row', 'column', 'place']);
  return {
    place: place.length > 0 ? place : of(['plant']),
    values: of(known.variables.map(({ id }) => id)),
    said: of([...known.variables.map(({ id }) => id), 'status']),
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

/**
 * Lines that are the headings themselves or say them again, as a table does that is continued on another page. Where
 * they say more or less than before, what stands beneath is no longer what it was, and they are not.
 */
export function headingsAgain(
  grid: Grid,
  heading: number,
  uses: ReadonlyMap<number, ColumnUse>,
  [first, last]: readonly [number, number],
): number[] {
  return Array.from({ length: last - first + 1 }, (_, index) => first + index).filter((line) =>
    isHeadingAgain(grid, heading, uses, line),
  );
}

function isHeadingAgain(
  grid: Grid,
  heading: number,
  uses: ReadonlyMap<number, ColumnUse>,
  line: number,
): boolean {
  if (uses.size < 2) return false;
  const text = (at: number, field: number): string => grid.lines[at]?.[field]?.text ?? '';
  const width = grid.lines[line]?.length ?? 0;
  for (let field = 0; field < Math.max(width, grid.lines[heading]?.length ?? 0); field += 1)
    if (text(line, field) !== text(heading, field)) return false;
  return [...uses.keys()].some((field) => text(line, field) !== '');
}

/** Whether the next line that says anything says the headings again. */
export function isHeadingNext(
  grid: Grid,
  heading: number,
  uses: ReadonlyMap<number, ColumnUse>,
  line: number,
): boolean {
  for (let next = line + 1; next < grid.lines.length; next += 1)
    if (ownCells(grid, next).length > 0) return isHeadingAgain(grid, heading, uses, next);
  return false;
}

/**
 * A line with nothing but the name of a container. Beneath the headings a number or a letter alone is a row without
 * weights, and a sentence that names a container a remark, unless headings follow.
 */
export function isTitle(cells: readonly GridCell[], known: KnownTrial, isAboveHeadings: boolean): boolean {
  const [only, ...more] = cells;
  if (only === undefined || more.length > 0 || only.lines > 1) return false;
  return isContainerTitle(only.text, known) && (isAboveHeadings || isNameOnly(only.text, known));
}

/**
 * Words that may be the title of another container, though not of one that is known, or not alone in their line: the
 * rows beneath are no longer known to be of the container above.
 */
export const mayBeTitle = (cells: readonly GridCell[], known: KnownTrial): boolean =>
  cells.some(({ text, kind }) => kind === 'text' && (saysContainer(text) || isNameOnly(text, known)));

function titleAbove(grid: Grid, first: number, known: KnownTrial): number | null {
  for (let line = first - 1; line >= 0; line -= 1) {
    const cells = ownCells(grid, line);
    if (cells.length > 0) return isTitle(cells, known, true) ? line : null;
  }
  return null;
}

/** A line that sums up others: it says so, or all its values are formulas and it has no place of its own. */
function isSum(
  cells: readonly GridCell[],
  fields: Fields,
  line: number,
  grid: Grid,
  known: KnownTrial,
): boolean {
  const first = cells[0];
  const isCalledSum = first !== undefined && first.kind === 'text' && sums.test(plainWords(first.text));
  if (isCalledSum && containerNamed(first.text, known) === null) return true;
  const values = fields.values.flatMap((field) => grid.lines[line]?.[field] ?? []);
  const places = fields.place.flatMap((field) => grid.lines[line]?.[field] ?? []);
  return values.length > 0 && places.length === 0 && values.every(({ isFormula }) => isFormula);
}
