import { faultOfUnit } from './line-values.ts';
import { nearest } from '../check/nearest.ts';
import { showText } from '../check/show-value.ts';
import { say } from '../model/say.ts';
import { coversOthers, faultOfFormula, faultOfSpread } from './cell-faults.ts';
import { cellValue, statusOfCell, wholeOf } from './cell-value.ts';
import { containerNamed } from './container-named.ts';
import { dateOfWords } from './dates-in-words.ts';
import type { GridCell } from './grid.ts';
import type { ColumnUse, Key } from './mapping.ts';
import { readPlace } from './read-place.ts';
import { plainWords } from './plain-words.ts';
import { cellAt, type TableReading } from './table-reading.ts';

/** What a line of a table says beside its values. */
export interface SaidOfLine {
  keys: Record<Key, string>;
  /** Keys whose cell was faulty, and has been told of. */
  faulty: ReadonlySet<string>;
  status: string;
  remark: string;
  /** Totals of pots, with the cut or plant that their headings fix. */
  potTotals: { at: Partial<Record<Key, string>>; digits: string; unit: string }[];
  levels: Map<string, string>;
  block: string;
  plot: string;
  plants: string;
}

const ofPlace = new Set(['container', 'row', 'column', 'place', 'plant', 'cut']);

type Draft = SaidOfLine & { faulty: Set<string>; remarks: string[] };

/** Reads all fields of a line that are no values. */
export function readLine(table: TableReading, line: number): SaidOfLine {
  const { always } = table.mapping;
  const keys = { container: table.container, row: '', column: '', plant: '', cut: '', date: '', ...always };
  if (table.mapping.hasTitles) keys.container = table.container;
  const said: Draft = {
    keys,
    faulty: new Set(),
    status: '',
    remark: '',
    remarks: [],
    potTotals: [],
    levels: new Map(),
    block: '',
    plot: '',
    plants: '',
  };
  // A place may need its container, whose column can stand behind it.
  const uses = [...table.mapping.uses].sort(
    ([, a], [, b]) => Number(a.is === 'place') - Number(b.is === 'place'),
  );
  // A line that says nothing of its place at all may be a sum of those above, and none of their plants.
  const hasPlace = uses.some(([field, { is }]) => ofPlace.has(is) && cellAt(table, line, field) !== null);
  for (const [field, use] of uses) {
    if (table.known.variables.some(({ id }) => id === use.is)) continue;
    const own = cellAt(table, line, field);
    const cell = own ?? (use.isCarried === true && hasPlace ? (table.above.get(field) ?? null) : null);
    if (cell === null) continue;
    if (use.isCarried === true) table.above.set(field, cell);
    if (cell.kind === 'fault') {
      faultOfFormula(table, said, use, cell);
      continue;
    }
    if (coversOthers(table, cell, use)) {
      faultOfSpread(table, said, use, cell);
      continue;
    }
    readCell(table, said, use, cell);
  }
  return { ...said, remark: said.remarks.join('; ') };
}

function readCell(table: TableReading, said: Draft, use: ColumnUse, cell: GridCell): void {
  const { is } = use;
  const take = (): void => table.use(cell, is);
  if (is === 'remark') {
    take();
    said.remarks.push(cell.text);
  } else if (is === 'status') {
    take();
    said.status = statusOfCell(cell.text, table.mapping.words);
  } else if (is === 'block' || is === 'plot') {
    take();
    said[is] = cell.text;
  } else if (is === 'pot_total') readTotal(table, said, use, cell);
  else if (is === 'place') readPlace(table, said, use, cell);
  else if (is === 'container' || is === 'date') {
    const text = is === 'container' ? containerOf(table, cell) : dateOf(table, cell);
    table.use(cell, is);
    if (text === null) said.faulty.add(is);
    else said.keys[is] = text;
  } else if (is === 'row' || is === 'column' || is === 'plant' || is === 'cut' || is === 'plants')
    readWhole(table, said, is, cell);
  else if (table.known.factors.some(({ id }) => id === is)) {
    take();
    const level = levelOf(table, is, cell);
    if (level !== null) said.levels.set(is, level);
  }
}

/** What may stand before a number and says no more than its heading does. */
const before = {
  row: /^(?:row|fila|r)\.?\s*(?=\d)/iu,
  column: /^(?:column|columna|col|c)\.?\s*(?=\d)/iu,
  plant: /^(?:plant|planta|pl|p|no|nr|#)\.?\s*(?=\d)/iu,
  cut: /^(?:cut|harvest|corte|cosecha|no|nr|#)\.?\s*(?=\d)/iu,
  plants: /^(?!)/u,
} as const;

function readWhole(
  table: TableReading,
  said: Draft,
  is: 'row' | 'column' | 'plant' | 'cut' | 'plants',
  cell: GridCell,
): void {
  table.use(cell, is);
  const bare = cell.text.replace(before[is], '');
  const whole = cell.kind === 'date' ? null : (wholeOf(bare) ?? letterAsNumber(is, cell.text));
  if (whole === null) {
    said.faulty.add(is);
    table.fault(
      'spreadsheet-place',
      cell,
      say('{found} is no whole number, as the {key} must be.', { found: showText(cell.text), key: say(is) }),
      cell.text,
    );
  } else if (is === 'plants') said.plants = whole;
  else said.keys[is] = whole;
}

/** Rows and columns are lettered by some: A is 1. */
function letterAsNumber(is: string, text: string): string | null {
  const isLetter = (is === 'row' || is === 'column') && /^[A-Za-z]$/.test(text);
  return isLetter ? String(text.toUpperCase().codePointAt(0)! - 64) : null;
}

function readTotal(table: TableReading, said: Draft, use: ColumnUse, cell: GridCell): void {
  const { decimal, words } = table.mapping;
  table.use(cell, use.is);
  const value = cellValue(cell, { decimal, words, isWeight: true });
  if (typeof value === 'object' && 'digits' in value) {
    if (value.unit === null && use.unit === undefined && table.unsureUnits.has(use.is))
      faultOfUnit(table, use, cell);
    said.potTotals.push({ at: use.at ?? {}, digits: value.digits, unit: value.unit ?? use.unit ?? '' });
  } else if (value !== 'blank')
    table.fault(
      'spreadsheet-value',
      cell,
      say("{found} is not a number, as a pot's total must be.", { found: showText(cell.text) }),
      cell.text,
    );
}

function containerOf(table: TableReading, cell: GridCell): string | null {
  const { containers } = table.known;
  const id = containerNamed(cell.text, table.known);
  if (id !== null && id !== '') return id;
  const ids = containers.map((one) => one.id);
  table.fault(
    'spreadsheet-place',
    cell,
    say('{found} is none of the containers of trial.yaml ({known}).', {
      found: showText(cell.text),
      known: ids.join(', '),
    }),
    cell.text,
  );
  return null;
}

function dateOf(table: TableReading, cell: GridCell): string | null {
  const date = cell.kind === 'date' ? cell.text.slice(0, 10) : dateOfWords(cell.text, table.mapping.dates);
  if (date !== null && date !== 'two ways') return date;
  const found = showText(cell.text);
  table.fault(
    'spreadsheet-date',
    cell,
    date === null
      ? say('{found} is no date; write year-month-day, such as 2025-10-20.', { found })
      : say('{found} can be read in two ways: say whether the day or the month stands first.', { found }),
    cell.text,
  );
  return null;
}

function levelOf(table: TableReading, factor: string, cell: GridCell): string | null {
  const levels = table.known.factors.find(({ id }) => id === factor)?.levels ?? [];
  if (levels.length === 0) return cell.text;
  const plain = plainWords(cell.text);
  const level = levels.find(
    ({ id, name }) => id === cell.text || plainWords(id) === plain || plainWords(name ?? '') === plain,
  );
  if (level !== undefined) return level.id;
  const known = [...levels.flatMap(({ name = [] }) => name), ...levels.map(({ id }) => id)];
  const near = nearest(cell.text, known);
  table.fault(
    'spreadsheet-level',
    cell,
    near === null
      ? say('{found} is no level of {factor} in trial.yaml.', { found: showText(cell.text), factor })
      : say('{found} is no level of {factor} in trial.yaml; did you mean {near}?', {
          found: showText(cell.text),
          factor,
          near,
        }),
    cell.text,
  );
  return null;
}
