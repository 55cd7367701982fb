/** What is wrong with the plants of a line. */
import { showText } from '../check/show-value.ts';
import { say } from '../model/say.ts';
import type { GridCell } from './grid.ts';
import type { PlantValues } from './line-values.ts';
import { keys } from './mapping.ts';
import type { SaidOfLine } from './read-line.ts';
import type { TableReading } from './table-reading.ts';

/** Whether every plant of a line has a place; told of where not. */
export function isPlaced(
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
export function agrees(table: TableReading, said: SaidOfLine, plants: readonly PlantValues[]): boolean {
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
export function isWithin(
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
