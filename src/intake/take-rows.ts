import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import type { Sheet } from '../model/workbook.ts';
import { cellName } from './cell-name.ts';
import { containerNamed } from './container-named.ts';
import { headingsAgain, isHeadingNext, isTitle, mayBeTitle, ownCells } from './data-lines.ts';
import { gridOf } from './grid.ts';
import { intakeProblem } from './intake-problem.ts';
import type { KnownTrial } from './known.ts';
import { lineValues, type PlantValues } from './line-values.ts';
import { agrees, isPlaced, isWithin } from './line-faults.ts';
import type { Key, Mapping } from './mapping.ts';
import { dataAbove, isNumberedOn, saidTwice, whatIsLacking } from './mapping-faults.ts';
import { totalsOf } from './pot-totals.ts';
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
