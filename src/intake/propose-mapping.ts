import type { Sheet, WorkbookCell } from '../model/workbook.ts';
import { isWeight } from '../model/units.ts';
import { say } from '../model/say.ts';
import { containerNamed } from './container-named.ts';
import { dataLines, headingsAgain, type DataLines } from './data-lines.ts';
import { orderOfDates } from './dates-in-words.ts';
import { findHeadings, type Headings } from './find-headings.ts';
import { gridOf, type Grid } from './grid.ts';
import type { KnownTrial } from './known.ts';
import type { ColumnUse, Key, Mapping } from './mapping.ts';
import { placeFormOf, placeInWords } from './place-in-words.ts';
import { unitInCell, unitsBesideBare } from './units-in-cells.ts';

/** How a sheet could be read, and what in that was guessed and should be looked at. */
export interface Proposal {
  mapping: Mapping;
  guesses: readonly string[];
}

/** A name and numbers beside it look like a turned table with two headings; more than these are needed. */
const leastTurned = 3;

/** How a sheet could be read; null where no table of harvested plants is found on it. */
export function proposeMapping(sheet: Sheet, known: KnownTrial): Proposal | null {
  const [upright, turned] = [false, true].map((isTurned) => {
    const grid = gridOf(sheet, isTurned);
    const headings = findHeadings(grid, known);
    return headings === null ? null : { grid, headings };
  });
  const isTurned = turned && turned.headings.score > Math.max(leastTurned, upright?.headings.score ?? 0);
  const better = isTurned ? turned : upright;
  return better ? fillIn(sheet, better.grid, better.headings, known) : null;
}

/** All but the headings and the uses of the fields, which are given. */
export function fillIn(sheet: Sheet, grid: Grid, headings: Headings, known: KnownTrial): Proposal | null {
  const guesses: string[] = [];
  const uses = placed(headings.uses, known, guesses);
  const data = dataLines(grid, headings, uses, known);
  if (data === null) return null;
  const values = [...uses].filter(([, { is }]) => known.variables.some(({ id }) => id === is));
  const fields = values.map(([field]) => field);
  const lines = {
    ...data,
    leftOut: [...data.leftOut, ...headingsAgain(grid, headings.last, uses, data.lines)],
  };
  const cells = (field: number): (WorkbookCell | null)[] => cellsIn(grid, lines, fields, field);
  const found = values.flatMap(([field]) => cells(field)).filter((cell) => cell !== null);
  const hasPlace = [...uses.values()].some(({ is }) => is === 'row' || is === 'column' || is === 'place');
  const hasStatus = [...uses].some(([field, { is }]) => is === 'status' && isFilled(grid, data, field));
  if (found.length === 0 && !hasStatus) return null;
  // A table of nothing but formulas, and no place but the container's, sums up weights that stand elsewhere.
  if (!hasPlace && found.every(({ isFormula }) => isFormula)) return null;
  if (values.some(([, { at }]) => at?.column !== undefined))
    guesses.push(
      say('The table is taken for a drawing of the container: its rows down the sheet, its columns across.'),
    );
  // Columns of the same variable are weighed on the same scale.
  const alike = ({ is }: ColumnUse): (WorkbookCell | null)[] =>
    [...uses].flatMap(([at, use]) => (use.is === is && use.unit === undefined ? cells(at) : []));
  const completing = new Map([...uses].map(([field, use]) => [field, alike(use)]));
  for (const [field, use] of uses)
    uses.set(
      field,
      completed(use, cells(field), known, guesses, grid.fieldName(field), completing.get(field)!),
    );
  const texts = (is: (use: ColumnUse) => boolean, kind?: WorkbookCell['kind']): string[] =>
    [...uses]
      .filter(([, use]) => is(use))
      .flatMap(([field]) =>
        cells(field).flatMap((cell) => (cell === null || cell.kind !== (kind ?? cell.kind) ? [] : cell.text)),
      );
  const isValue = ({ is }: ColumnUse): boolean =>
    is === 'pot_total' || values.some(([, use]) => use.is === is);
  return {
    mapping: {
      sheet: sheet.name,
      isTurned: grid.isTurned,
      headings: [headings.first, headings.last],
      lines: data.lines,
      leftOut: data.leftOut,
      uses,
      always: always(sheet, uses, data, known, guesses),
      hasTitles: data.hasTitles,
      words: {},
      decimal: decimalOf(texts(isValue, 'text')),
      dates: orderOfDates(texts(({ is }) => is === 'date')),
    },
    guesses,
  };
}

/** The cells of a field in the lines that have a value, so that titles and repeated headings say nothing of it. */
function cellsIn(
  grid: Grid,
  { lines: [first, last], leftOut }: DataLines,
  values: readonly number[],
  field: number,
): (WorkbookCell | null)[] {
  return grid.lines.slice(first, last + 1).flatMap((line, index) => {
    const hasValue = values.some((at) => (line[at]?.text ?? '') !== '');
    return hasValue && !leftOut.includes(first + index) ? [line[field] ?? null] : [];
  });
}

const isFilled = (grid: Grid, { lines: [first, last] }: DataLines, field: number): boolean =>
  grid.lines.slice(first, last + 1).some((line) => (line[field]?.text ?? '') !== '');

/** Where only plants are numbered, and containers have a grid, the number is the place's. */
function placed(
  given: ReadonlyMap<number, ColumnUse>,
  known: KnownTrial,
  guesses: string[],
): Map<number, ColumnUse> {
  const uses = new Map(given);
  const is = (name: string): boolean => [...uses.values()].some((use) => use.is === name);
  if (is('place') || is('row') || is('column') || !is('plant') || known.containers.length === 0) return uses;
  const [field] = [...uses].find(([, use]) => use.is === 'plant')!;
  uses.set(field, { is: 'place' });
  guesses.push(say('Plants are numbered, and no row or column is given: the number is taken for the place.'));
  return uses;
}

const mayBeCarried = new Set(['container', 'row', 'cut', 'date', 'block', 'plot']);

/** What the cells of a field say of its use beside its heading. */
function completed(
  use: ColumnUse,
  cells: readonly (WorkbookCell | null)[],
  known: KnownTrial,
  guesses: string[],
  field: string,
  all: readonly (WorkbookCell | null)[],
): ColumnUse {
  if (use.is === 'place') return withForm(use, cells, known, guesses, field);
  const isFactor = known.factors.some(({ id }) => id === use.is);
  if (mayBeCarried.has(use.is) || isFactor) {
    const empty = cells.filter((cell) => cell === null).length;
    // Written once for many is meant so; a single gap is a slip, and told of.
    if (!cells[0] || empty * 2 < cells.length) return use;
    guesses.push(
      say('Column {field}: cells left empty are taken to say what the one above them says.', { field }),
    );
    return { ...use, isCarried: true };
  }
  const variable = known.variables.find(({ id }) => id === use.is);
  if ((variable === undefined && use.is !== 'pot_total') || use.unit !== undefined) return use;
  const own = variable?.unit ?? known.variables[0]?.unit ?? '';
  if (unitsBesideBare(all, own) !== null) return use;
  const shown = cells.flatMap((cell) => (cell === null ? [] : (unitInCell(cell) ?? [])));
  const unit = shown[0] ?? own;
  if (shown.length === 0 && isWeight(unit)) {
    const guess = say('No unit is written beside the weights: they are taken to be in {unit}.', { unit });
    if (!guesses.includes(guess)) guesses.push(guess);
  }
  return unit === '' ? use : { ...use, unit };
}

function withForm(
  use: ColumnUse,
  cells: readonly (WorkbookCell | null)[],
  known: KnownTrial,
  guesses: string[],
  field: string,
): ColumnUse {
  const texts = cells.flatMap((cell) => (cell === null || cell.kind === 'date' ? [] : [cell.text]));
  const form = placeFormOf(texts, known);
  if (form === null) return use;
  if (form === 'numbered along rows')
    guesses.push(
      say('Column {field}: places are taken to be numbered along the rows, from row 1 column 1.', { field }),
    );
  if (form === 'row-column')
    guesses.push(say('Column {field}: a place such as 2-3 is taken for row 2, column 3.', { field }));
  if (form !== 'letter row, number column') return { ...use, as: form };
  const fits = texts.every((text) => {
    const place = placeInWords(text, form, null, known);
    return (
      known.containers.length === 0 ||
      known.containers.some(
        ({ rows, columns }) => place !== null && place.row <= rows && place.column <= columns,
      )
    );
  });
  const as = fits ? form : 'letter column, number row';
  guesses.push(
    fits
      ? say('Column {field}: the letter of a place is taken for its row, the number for its column.', {
          field,
        })
      : say('Column {field}: the letter of a place is taken for its column, the number for its row.', {
          field,
        }),
  );
  return { ...use, as };
}

function always(
  sheet: Sheet,
  uses: ReadonlyMap<number, ColumnUse>,
  { hasTitles }: DataLines,
  known: KnownTrial,
  guesses: string[],
): Partial<Record<Key, string>> {
  const all = [...uses.values()];
  const says =
    hasTitles ||
    all.some(
      ({ is, as, at }) => is === 'container' || as === 'container-row-column' || at?.container !== undefined,
    );
  if (says) return {};
  const container = containerOfSheet(sheet.name, known);
  if (container === null) return {};
  guesses.push(say('Every row is taken to be of container {container}.', { container }));
  return { container };
}

/** What spreadsheets call a sheet that nobody has named. */
const unnamed = /^(?:sheet|hoja|feuille?|tabelle|blad|planilha)? *\d*$/i;

/** The container of a sheet without a column for it: the one that its name names, or the only one there is. */
function containerOfSheet(name: string, known: KnownTrial): string | null {
  if (known.containers.length === 0) return unnamed.test(name) ? 'T1' : containerNamed(name, known);
  const [only, ...more] = known.containers;
  return containerNamed(name, known) ?? (more.length === 0 ? only!.id : null);
}

/**
 * The decimal mark: a comma where numbers have one between digits and none has a point. Null where each mark stands
 * before three digits, beside whole numbers: it may part thousands as well.
 */
function decimalOf(texts: readonly string[]): '.' | ',' | null {
  const marks = texts.flatMap((text) => {
    const found = /^(\d+)([.,])(\d+)(?:\s*\p{L}+)?$/u.exec(text.trim());
    return found === null ? [] : [{ whole: found[1]!, mark: found[2]!, after: found[3]! }];
  });
  const mayBeThousands = marks.every(
    ({ whole, after }) => after.length === 3 && /^[1-9]\d{0,2}$/.test(whole),
  );
  const isComma = marks.length > 0 && marks.every(({ mark }) => mark === ',');
  const hasWhole = texts.some((text) => /^[1-9]\d{2}(?:\s*\p{L}+)?$/u.test(text.trim()));
  if (marks.length > 0 && mayBeThousands && (isComma || hasWhole)) return null;
  return isComma ? ',' : '.';
}
