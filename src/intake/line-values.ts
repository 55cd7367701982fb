import { showText } from '../check/show-value.ts';
import { say } from '../model/say.ts';
import { isWeight } from '../model/units.ts';
import { cellName } from './cell-name.ts';
import { cellValue, type CellValue } from './cell-value.ts';
import type { GridCell } from './grid.ts';
import { keys, type ColumnUse, type Key } from './mapping.ts';
import { cellAt, type TableReading } from './table-reading.ts';

/** The values of one plant: those that stand under headings which fix the same plant, cut or place. */
export interface PlantValues {
  at: Partial<Record<Key, string>>;
  values: Map<string, { digits: string; unit: string }>;
  /** What a word in the place of the primary value says; `` for none. */
  status: string;
  /** True where every cell is empty, or says so. */
  isBlank: boolean;
  first: GridCell | null;
  /** Notes fastened to its cells, where the line has several plants. */
  notes: string[];
}

/** The values of a line, plant by plant in the order of the fields. */
export function lineValues(table: TableReading, line: number): PlantValues[] {
  const groups = new Map<string, PlantValues>();
  for (const [field, use] of table.mapping.uses) {
    const variable = table.known.variables.find(({ id }) => id === use.is);
    if (variable === undefined) continue;
    const name = keys.map((key) => use.at?.[key] ?? '').join('|');
    const group: PlantValues = groups.get(name) ?? {
      at: use.at ?? {},
      values: new Map(),
      status: '',
      isBlank: true,
      first: null,
      notes: [],
    };
    groups.set(name, group);
    const cell = cellAt(table, line, field);
    if (cell === null) continue;
    group.first ??= cell;
    if (cell.note !== null && use.at !== undefined) {
      group.notes.push(cell.note);
      table.notes.add(cellName(cell.row, cell.column));
    }
    if (cell.lines > 1 || cell.fields > 1) {
      faultOfJoined(table, cell);
      continue;
    }
    readValue(table, group, use, cell);
  }
  return [...groups.values()];
}

/** A joined weight stands beside several plants: whose it is, only the grower knows. */
function faultOfJoined(table: TableReading, cell: GridCell): void {
  table.use(cell, 'joined');
  if (table.joined.has(`${cell.row} ${cell.column}`)) return;
  table.joined.add(`${cell.row} ${cell.column}`);
  table.fault(
    'spreadsheet-joined',
    cell,
    say(
      '{found} stands in a joined cell beside several plants; write it beside the one it is of, or take the column for the total of the pot.',
      {
        found: showText(cell.text),
      },
    ),
    cell.text,
  );
}

function readValue(table: TableReading, group: PlantValues, use: ColumnUse, cell: GridCell): void {
  const { decimal, words } = table.mapping;
  const weighed = isWeight(table.known.variables.find(({ id }) => id === use.is)?.unit);
  const value = cellValue(cell, { decimal, words, isWeight: weighed });
  table.use(cell, use.is);
  if (value === 'blank') return;
  if (typeof value === 'string') {
    table.fault('spreadsheet-value', cell, messageOf(value, cell, weighed, decimal), cell.text);
    group.isBlank = false;
    return;
  }
  group.isBlank = false;
  if ('status' in value) {
    if (use.is === table.known.variables[0]?.id) group.status = value.status;
    else
      table.fault(
        'spreadsheet-value',
        cell,
        say(
          '{found} stands where a number of {variable} must; what became of a plant is said beside its {first}.',
          {
            found: showText(cell.text),
            variable: use.is,
            first: table.known.variables[0]?.id ?? '',
          },
        ),
        cell.text,
      );
    return;
  }
  if (value.unit === null && use.unit === undefined && table.unsureUnits.has(use.is)) {
    faultOfUnit(table, use, cell);
    return;
  }
  if (group.values.has(use.is)) {
    table.fault(
      'spreadsheet-twice',
      cell,
      say(
        '{found} is a second {variable} of the same plant in this row; say which column is of what plant or cut.',
        {
          found: showText(cell.text),
          variable: use.is,
        },
      ),
      cell.text,
    );
    return;
  }
  group.values.set(use.is, { digits: value.digits, unit: value.unit ?? use.unit ?? '' });
}

/** Some cells say their unit and this one does not, and nothing above them does. */
export function faultOfUnit(table: TableReading, { is }: ColumnUse, cell: GridCell): void {
  table.fault(
    'spreadsheet-value',
    cell,
    say('{found} says no unit, and others beside it say {units}: say in which unit the column is.', {
      found: showText(cell.text),
      units: table.unsureUnits.get(is) ?? '',
    }),
    cell.text,
  );
}

function messageOf(
  fault: Extract<CellValue, string>,
  { text }: GridCell,
  isWeighed: boolean,
  decimal: '.' | ',' | null,
): string {
  const found = showText(text);
  if (fault === 'not a number' && /^\d+[.,]\d+$/.test(text.trim()))
    return decimal === '.'
      ? say(
          '{found} has a comma where the decimal mark is a point; write the point, or say that the mark is a comma.',
          { found },
        )
      : say(
          '{found} has a point where the decimal mark is a comma; write the comma, or say that the mark is a point.',
          { found },
        );
  if (fault === 'two ways')
    return say(
      '{found} may have a decimal mark in it, or one between thousands: say which the decimal mark is.',
      {
        found,
      },
    );
  if (fault === 'a share') return say('{found} is shown as a percentage, which no weight is.', { found });
  if (fault === 'below zero') return say('{found} is below zero, which no weight is.', { found });
  if (fault === 'a date')
    return say(
      'the spreadsheet has made a date of what was typed ({found}); set the column to numbers and type it again.',
      { found },
    );
  if (fault === 'a fault')
    return say('{found} is the fault of a formula; mend the formula, or type the number.', { found });
  return isWeighed
    ? say('{found} is not a weight; say what it stands for, such as dead or not weighed.', { found })
    : say('{found} is not a number; say what it stands for, or take it out.', { found });
}
