import { showText } from '../check/show-value.ts';
import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import type { Sheet } from '../model/workbook.ts';
import { cellName } from './cell-name.ts';
import { wordsOfUse } from './column-words.ts';
import { containerNamed } from './container-named.ts';
import { headingsAgain, isHeadingNext, isTitle, mayBeTitle, ownCells } from './data-lines.ts';
import { gridOf, type Grid, type GridCell } from './grid.ts';
import { intakeProblem } from './intake-problem.ts';
import type { KnownTrial } from './known.ts';
import { lineValues, type PlantValues } from './line-values.ts';
import { keys, type Key, type Mapping } from './mapping.ts';
import { readLine, type SaidOfLine } from './read-line.ts';
import { cellAt, type TableReading } from './table-reading.ts';
import { unsureUnits } from './units-in-cells.ts';

/** A row of harvest.csv to be, and what its line says of the layout. */
export interface TakenRow {
  /** As the keys of harvest.csv; `` where nothing is said. */
  keys: Readonly<Record<Key, string>>;
  /** By variable: digits with a point, and their unit (`` for none). */
  values: ReadonlyMap<string, { digits: string; unit: string }>;
  status: string;
  potTotal: { digits: string; unit: string } | null;
  remark: string;
  /** By factor: the level's id, or the text itself where no level is known yet. */
  levels: ReadonlyMap<string, string>;
  block: string;
  plot: string;
  plants: string;
  /** The sheet, and row and column from 0, of the cell it was taken from. */
  from: { sheet: string; row: number; column: number };
}

/** What came of a table. */
export interface TakenTable {
  rows: readonly TakenRow[];
  problems: readonly Problem[];
  /** The names of cells that were used, to what they were taken for. */
  used: ReadonlyMap<string, string>;
  /** The names of cells whose note was taken up. */
  notes: ReadonlySet<string>;
}

/** Reads every row of a table as a mapping says. */
export function takeRows(file: string, sheet: Sheet, mapping: Mapping, known: KnownTrial): TakenTable {
  const problems: Problem[] = [];
  const used = new Map<string, string>();
  const notes = new Set<string>();
  const grid = gridOf(sheet, mapping.isTurned);
  const table: TableReading = {
    grid,
    mapping,
    known,
    use: (cell, what) => void used.set(cellName(cell.row, cell.column), what),
    fault: (rule, { row, column }, message, found = '') => {
      const place = { file, sheet: sheet.name, row, column };
      problems.push(intakeProblem(rule, place, message, { found: found === '' ? null : found }));
    },
    above: new Map(),
    joined: new Set(),
    notes,
    unsureUnits: unsureUnits(grid, mapping, known),
    headingsAgain: new Set(headingsAgain(grid, mapping.headings[1], mapping.uses, mapping.lines)),
    container: mapping.always.container ?? '',
  };
  const lacking = whatIsLacking(mapping, known);
  if (lacking !== null) {
    table.fault('spreadsheet-mapping', table.grid.place(mapping.headings[1], 0), lacking);
    return { rows: [], problems, used, notes };
  }
  for (const [field, message] of saidTwice(grid, mapping))
    table.fault('spreadsheet-twice', grid.place(mapping.headings[1], field), message);
  for (const cell of dataAbove(table))
    table.fault(
      'spreadsheet-mapping',
      cell,
      say(
        'this row looks like one of the plants, and stands above the headings; say which row has the headings.',
      ),
    );
  if (problems.length > 0) return { rows: [], problems, used, notes };
  const rows: TakenRow[] = [];
  for (let line = Math.min(mapping.headings[0], mapping.lines[0]); line <= mapping.lines[1]; line += 1)
    rows.push(...rowsOfLine(table, sheet.name, line));
  if (problems.length === 0 && isNumberedOn(mapping, rows))
    table.fault(
      'spreadsheet-place',
      grid.place(mapping.headings[1], 0),
      say(
        'places seem to be numbered on from one container to the next: give row and column, or number them anew in each.',
      ),
    );
  return { rows, problems, used, notes };
}

/** Numbers that go on from one container to the next are no places within it, though some would be. */
function isNumberedOn({ uses }: Mapping, rows: readonly TakenRow[]): boolean {
  if (![...uses.values()].some(({ as }) => as?.startsWith('numbered') === true)) return false;
  const byContainer = Map.groupBy(rows, ({ keys: { container } }) => container);
  const places = [...byContainer.values()].map(
    (some) => new Set(some.map(({ keys: { row, column } }) => `${row} ${column}`)),
  );
  const isFirst = places.map((some) => some.has('1 1'));
  const isApart =
    new Set(places.flatMap((some) => [...some])).size === places.reduce((sum, { size }) => sum + size, 0);
  return places.length > 1 && isFirst.includes(false) && isApart;
}

/** The first cells of rows above the headings that have a place and a weight under the same columns. */
function dataAbove({ grid, mapping, known }: TableReading): GridCell[] {
  const fields = (names: readonly string[]): number[] =>
    [...mapping.uses].filter(([, { is }]) => names.includes(is)).map(([field]) => field);
  const [places, values] = [fields(['row', 'column', 'place']), fields(known.variables.map(({ id }) => id))];
  if (places.length === 0) return [];
  return grid.lines.slice(0, mapping.headings[0]).flatMap((line) => {
    const isPlaced = places.every((field) => /\d|^\p{L}$/u.test(line[field]?.text ?? ''));
    const hasValue = values.some((field) => /^\d/.test(line[field]?.text ?? ''));
    return isPlaced && hasValue ? (line.find((cell) => cell !== null) ?? []) : [];
  });
}

/** Columns that are taken for what another is taken for already: of two tables side by side, or of two cuts. */
function saidTwice(grid: Grid, { uses }: Mapping): [number, string][] {
  const seen = new Map<string, number>();
  return [...uses].flatMap(([field, use]): [number, string][] => {
    if (use.is === 'remark' || use.is === 'nothing') return [];
    const name = [use.is, ...keys.map((key) => use.at?.[key] ?? '')].join('|');
    const before = seen.get(name);
    if (before === undefined) {
      seen.set(name, field);
      return [];
    }
    const message = say(
      '{first} and {second} are both taken for {use}; say which is of what plant, cut or container, or take one for nothing.',
      { first: grid.fieldName(before), second: grid.fieldName(field), use: wordsOfUse(use) },
    );
    return [[field, message]];
  });
}

/** What a mapping does not say where it stands, in a sentence; null where every row can have a place. */
function whatIsLacking({ uses, always, hasTitles }: Mapping, known: KnownTrial): string | null {
  const all = [...uses.values()];
  const values = all.filter(({ is }) => known.variables.some(({ id }) => id === is));
  if (values.length === 0)
    return say('No column is taken for a weight, or for another variable of the trial.');
  const place = all.find(({ is }) => is === 'place');
  if (place !== undefined && place.as === undefined)
    return say('It is not clear how places are written: as 2-3 for row 2 column 3, or otherwise.');
  const isSaid = (key: Key): boolean =>
    always[key] !== undefined ||
    all.some(({ is }) => is === key) ||
    values.every(({ at }) => at?.[key] !== undefined) ||
    (key === 'container' ? hasTitles || place?.as === 'container-row-column' : place !== undefined);
  const lacking = (['container', 'row', 'column'] as const).filter((key) => !isSaid(key));
  if (lacking.length === 0) return null;
  return say('Nothing says the {keys} of each plant; without its place a weight cannot be brought in.', {
    keys: lacking.map((key) => say(key)).join(', '),
  });
}

function rowsOfLine(table: TableReading, sheet: string, line: number): TakenRow[] {
  const { mapping, known } = table;
  const cells = ownCells(table.grid, line);
  const isHeading = line >= mapping.headings[0] && line <= mapping.headings[1];
  if (isHeading || table.headingsAgain.has(line)) {
    for (const field of mapping.uses.keys()) {
      const cell = cellAt(table, line, field);
      if (cell !== null) table.use(cell, 'heading');
    }
    return [];
  }
  if (line < mapping.lines[0] || mapping.leftOut.includes(line) || cells.length === 0) return [];
  const isNext = mapping.hasTitles && isHeadingNext(table.grid, mapping.headings[1], mapping.uses, line);
  const isFirst = line < mapping.headings[0];
  if (mapping.hasTitles && isTitle(cells, known, isNext || isFirst)) {
    table.container = containerNamed(cells[0]!.text, known) ?? '';
    table.use(cells[0]!, 'container');
    table.above.clear();
    return [];
  }
  const values = lineValues(table, line);
  const said = readLine(table, line);
  const first = cells[0]!;
  const plants = written(values, said);
  if (mapping.hasTitles && plants.length === 0 && mayBeTitle(cells, known)) table.container = '';
  if (plants.length === 0 || !isPlaced(table, said, plants, first)) return [];
  if (!agrees(table, said, plants) || !isWithin(table, said, plants, first)) return [];
  noteLine(table, line, said);
  const totals = totalsOf(table, said, plants, first);
  return plants.map((plant, index) =>
    rowOf(said, plant, index === 0, sheet, plant.first ?? first, totals[index] ?? null),
  );
}

/** The pot's total of each plant's row: on the first row of the pot and cut that it is of. */
function totalsOf(
  table: TableReading,
  said: SaidOfLine,
  plants: readonly PlantValues[],
  first: GridCell,
): TakenRow['potTotal'][] {
  const totals: TakenRow['potTotal'][] = plants.map(() => null);
  for (const { at, digits, unit } of said.potTotals) {
    const isOf = (plant: PlantValues): boolean =>
      keys.every((key) => at[key] === undefined || at[key] === plant.at[key]);
    const pots = new Set(
      plants
        .filter(isOf)
        .map((plant) =>
          ['container', 'row', 'column', 'cut'].map((key) => plant.at[key as Key] ?? '').join(' '),
        ),
    );
    const index = plants.findIndex(isOf);
    if (pots.size === 1 && totals[index] === null) {
      totals[index] = { digits, unit };
      continue;
    }
    const message = say('{found} is a total, and it is not clear of which pot and cut in this row.', {
      found: showText(digits),
    });
    table.fault('spreadsheet-value', first, message, digits);
  }
  return totals;
}

/**
 * The plants of a line that are written down. A line with one value has its row even without it, so that the check
 * asks for it; of a line with a column for each plant, those left empty are no plants, unless all are and something
 * else is said.
 */
function written(values: readonly PlantValues[], said: SaidOfLine): readonly PlantValues[] {
  const filled = values.filter(({ isBlank, status }) => !isBlank || status !== '');
  const isSaid = said.status !== '' || said.remark !== '' || said.potTotals.length > 0;
  if (filled.length > 0) return filled;
  const hasPlace = said.keys.row !== '' && said.keys.column !== '';
  if (values.length === 1) return isSaid || hasPlace ? values : [];
  return isSaid && hasPlace ? values.slice(0, 1) : [];
}

function isPlaced(
  table: TableReading,
  said: SaidOfLine,
  plants: readonly PlantValues[],
  first: GridCell,
): boolean {
  const lacking = (['container', 'row', 'column'] as const).filter(
    (key) => said.keys[key] === '' && plants.some(({ at }) => at[key] === undefined) && !said.faulty.has(key),
  );
  if (lacking.length > 0)
    table.fault(
      'spreadsheet-place',
      first,
      say('this row has something of a plant and not its {keys}; fill it in, or leave the row out.', {
        keys: lacking.map((key) => say(key)).join(', '),
      }),
    );
  return lacking.length === 0 && said.faulty.size === 0;
}

/** A heading and a cell of the row may both say the plant or cut: where they differ, which is right is not ours to say. */
function agrees(table: TableReading, said: SaidOfLine, plants: readonly PlantValues[]): boolean {
  for (const { at, first } of plants) {
    const key = keys.find(
      (one) => at[one] !== undefined && said.keys[one] !== '' && at[one] !== said.keys[one],
    );
    if (key === undefined || first === null) continue;
    table.fault(
      'spreadsheet-place',
      first,
      say('its heading says {key} {found}, and its row {key} {other}.', {
        key: say(key),
        found: showText(at[key] ?? ''),
        other: showText(said.keys[key]),
      }),
    );
    return false;
  }
  return true;
}

/** A place that its container does not have is a place misread. */
function isWithin(
  table: TableReading,
  said: SaidOfLine,
  plants: readonly PlantValues[],
  start: GridCell,
): boolean {
  for (const { at, first } of plants) {
    const { container, row, column } = { ...said.keys, ...at };
    const grid = table.known.containers.find(({ id }) => id === container);
    if (grid === undefined || (Number(row) <= grid.rows && Number(column) <= grid.columns)) continue;
    table.fault(
      'spreadsheet-place',
      first ?? start,
      say(
        'row {row}, column {column} is outside of {container}, which has {rows} rows and {columns} columns.',
        {
          ...{ row, column, container },
          ...{ rows: grid.rows, columns: grid.columns },
        },
      ),
    );
    return false;
  }
  return true;
}

/** Notes fastened to cells of a row become part of its remark; one on a plant's own weight, of that plant's. */
function noteLine(table: TableReading, line: number, said: SaidOfLine): void {
  const found = new Set<string>();
  for (const [field, use] of table.mapping.uses) {
    const cell = table.grid.lines[line]?.[field] ?? null;
    const isOwn = use.at !== undefined && table.known.variables.some(({ id }) => id === use.is);
    if (cell?.note === null || cell === null || isOwn) continue;
    found.add(cell.note);
    table.notes.add(cellName(cell.row, cell.column));
  }
  said.remark = [said.remark, ...found].filter((text) => text !== '').join('; ');
}

function rowOf(
  said: SaidOfLine,
  plant: PlantValues,
  isFirst: boolean,
  sheet: string,
  { row, column }: { row: number; column: number },
  potTotal: TakenRow['potTotal'],
): TakenRow {
  const { levels, block, plot, plants } = said;
  // What is said of a line of several pots is said of each of them.
  const isElsewhere =
    plant.at.row !== undefined || plant.at.column !== undefined || plant.at.container !== undefined;
  return {
    keys: { ...said.keys, ...plant.at },
    values: plant.values,
    status: plant.status === '' ? said.status : plant.status,
    potTotal,
    remark: [isFirst || isElsewhere ? said.remark : '', ...plant.notes]
      .filter((text) => text !== '')
      .join('; '),
    levels,
    block,
    plot,
    plants,
    from: { sheet, row, column },
  };
}
