import { showText } from '../check/show-value.ts';
import { say } from '../model/say.ts';
import { containerNamed } from './container-named.ts';
import type { GridCell } from './grid.ts';
import type { ColumnUse, Key } from './mapping.ts';
import { placeInWords } from './place-in-words.ts';
import type { TableReading } from './table-reading.ts';

/** Reads a cell that names a place into the keys of its line. */
export function readPlace(
  table: TableReading,
  said: { keys: Record<Key, string>; faulty: Set<string> },
  { as }: ColumnUse,
  cell: GridCell,
): void {
  table.use(cell, 'place');
  const { known } = table;
  const isTold = as !== undefined && cell.kind !== 'date' && !isCutShort(cell, as, table);
  const place = isTold ? placeInWords(cell.text, as, said.keys.container, known) : null;
  const container = place?.container === null || place === null ? '' : containerNamed(place.container, known);
  if (place === null || container === null) {
    said.faulty.add('row').add('column');
    const message =
      cell.kind === 'date'
        ? say(
            'the spreadsheet has made a date of a place such as 2-3; write it R2C3, or set the column to text and type it again.',
          )
        : as !== undefined && isCutShort(cell, as, table)
          ? say(
              '{found} may have been typed as {longer}, which a spreadsheet makes a number of; write it R1C1.',
              {
                found: showText(cell.text),
                longer: `${cell.text}0`,
              },
            )
          : say('{found} cannot be read as a place ({form}).', {
              found: showText(cell.text),
              form: as ?? '',
            });
    table.fault('spreadsheet-place', cell, message, cell.text);
    return;
  }
  if (container !== '') said.keys.container = container;
  said.keys.row = String(place.row);
  said.keys.column = String(place.column);
}

/** Row 1 column 10, typed as 1.10, is the number 1.1 to a spreadsheet. */
function isCutShort({ text }: GridCell, form: string, { known }: TableReading): boolean {
  const found = /^\d+[.,](\d)$/.exec(text.trim());
  const most = Math.max(0, ...known.containers.map(({ columns }) => columns));
  return form === 'row-column' && found !== null && most >= Number(found[1]) * 10;
}
