/** What `import` shows of a spreadsheet before anything is written. */
import { escapeUnseen } from '../check/show-value.ts';
import type { Intake } from '../intake/bring-in.ts';
import { wordsOfUse } from '../intake/column-words.ts';
import { headingParts } from '../intake/find-headings.ts';
import { gridOf } from '../intake/grid.ts';
import type { Mapping } from '../intake/mapping.ts';
import type { TakenRow } from '../intake/take-rows.ts';
import { say, sayCount } from '../model/say.ts';
import type { Sheet } from '../model/workbook.ts';

const rowsShown = 5;

/** How a sheet is read: each column with its heading and what it is taken for. */
export function mappingReport(sheet: Sheet, mapping: Mapping, guesses: readonly string[]): string {
  const grid = gridOf(sheet, mapping.isTurned);
  const [first, last] = mapping.headings;
  const range = ([from, to]: readonly [number, number]): string =>
    from === to
      ? grid.lineName(from)
      : say('{from} to {to}', { from: grid.lineName(from), to: grid.lineName(to) });
  const read = {
    table: sheet.name === '' ? say('The table') : say('Sheet {name}', { name: sheet.name }),
    headings: range(mapping.headings),
    rows: range(mapping.lines),
  };
  const fields = Array.from({ length: grid.width }, (_, field) => field).flatMap((field) => {
    const heading = headingParts(grid, first, last, field).join(' ');
    const use = mapping.uses.get(field);
    if (heading === '' && use === undefined) return [];
    return [[grid.fieldName(field), heading, use === undefined ? say('not used') : wordsOfUse(use)]];
  });
  const always = Object.entries(mapping.always).map(([key, value]) => `${key} ${value}`);
  return [
    mapping.isTurned
      ? say('{table}: headings in {headings}, data in {rows}, turned', read)
      : say('{table}: headings in {headings}, data in {rows}', read),
    '\n',
    aligned(fields),
    ...(always.length === 0 ? [] : [`  ${say('always')}  ${always.join(', ')}\n`]),
    ...(mapping.leftOut.length === 0
      ? []
      : [`  ${say('left out')}  ${mapping.leftOut.map(grid.lineName).join(', ')}\n`]),
    ...guesses.map((guess) => `  ${say('Guessed: {guess}', { guess })}\n`),
  ].join('');
}

/** The first rows that harvest.csv would have, and what becomes of the cells. */
export function intakeReport({ rows, notUsed, used, remarks }: Intake): string {
  const shown = rows.slice(0, rowsShown).map(rowWords);
  return [
    ...(shown.length === 0 ? [] : [`${say('The first rows of harvest.csv:')}\n`, aligned(shown)]),
    `${countWords(rows.length, used.size, notUsed.length)}\n`,
    aligned(notUsed.map(({ cell, text, why }) => [cell, short(text), why])),
    ...remarks.map((remark) => `${remark}\n`),
  ].join('');
}

function countWords(rowCount: number, cellCount: number, unused: number): string {
  const rows = sayCount(rowCount, '{count} row', '{count} rows');
  const cells = sayCount(cellCount, '{count} cell', '{count} cells');
  if (unused === 0) return say('{rows} from {cells}; every cell is used', { rows, cells });
  return sayCount(
    unused,
    '{rows} from {cells}; {count} cell is not used:',
    '{rows} from {cells}; {count} cells are not used:',
    { rows, cells },
  );
}

function rowWords({ keys, values, status, levels }: TakenRow): string[] {
  const { container, row, column, plant, cut, date } = keys;
  return [
    `${container} ${row}-${column}`,
    plant === '' ? '' : say('plant {plant}', { plant }),
    cut === '' ? '' : say('cut {cut}', { cut }),
    date,
    [...levels.values()].join(', '),
    [...values].map(([id, { digits, unit }]) => `${id} ${digits} ${unit}`.trim()).join(', '),
    status,
  ];
}

const short = (text: string): string => (text.length > 60 ? `${text.slice(0, 59)}…` : text);

/** Columns side by side; those without a word are left out. */
function aligned(rows: readonly (readonly string[])[]): string {
  const widths: number[] = [];
  const cells = rows.map((row) => row.map(escapeUnseen));
  for (const row of cells)
    row.forEach((text, index) => (widths[index] = Math.max(widths[index] ?? 0, text.length)));
  return cells
    .map((row) => {
      const padded = row.flatMap((text, index) =>
        widths[index] === 0 ? [] : [text.padEnd(widths[index] ?? 0)],
      );
      return `  ${padded.join('  ').trimEnd()}\n`;
    })
    .join('');
}
