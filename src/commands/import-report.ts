/** What `import` shows of a spreadsheet before anything is written. */
import { escapeUnseen } from '../check/show-value.ts';
import type { Intake } from '../intake/bring-in.ts';
import { wordsOfUse } from '../intake/column-words.ts';
import { headingParts } from '../intake/find-headings.ts';
import { gridOf } from '../intake/grid.ts';
import type { Mapping } from '../intake/mapping.ts';
import type { TakenRow } from '../intake/take-rows.ts';
import type { Sheet } from '../model/workbook.ts';

const rowsShown = 5;

/** How a sheet is read: each column with its heading and what it is taken for. */
export function mappingReport(sheet: Sheet, mapping: Mapping, guesses: readonly string[]): string {
  const grid = gridOf(sheet, mapping.isTurned);
  const [first, last] = mapping.headings;
  const range = ([from, to]: readonly [number, number]): string =>
    from === to ? grid.lineName(from) : `${grid.lineName(from)} to ${grid.lineName(to)}`;
  const name = sheet.name === '' ? 'The table' : `Sheet ${sheet.name}`;
  const fields = Array.from({ length: grid.width }, (_, field) => field).flatMap((field) => {
    const heading = headingParts(grid, first, last, field).join(' ');
    const use = mapping.uses.get(field);
    if (heading === '' && use === undefined) return [];
    return [[grid.fieldName(field), heading, use === undefined ? 'not used' : wordsOfUse(use)]];
  });
  const always = Object.entries(mapping.always).map(([key, value]) => `${key} ${value}`);
  return [
    `${name}: headings in ${range(mapping.headings)}, data in ${range(mapping.lines)}${mapping.isTurned ? ', turned' : ''}\n`,
    aligned(fields),
    ...(always.length === 0 ? [] : [`  always  ${always.join(', ')}\n`]),
    ...(mapping.leftOut.length === 0
      ? []
      : [`  left out  ${mapping.leftOut.map(grid.lineName).join(', ')}\n`]),
    ...guesses.map((guess) => `  Guessed: ${guess}\n`),
  ].join('');
}

/** The first rows that harvest.csv would have, and what becomes of the cells. */
export function intakeReport({ rows, notUsed, used, remarks }: Intake): string {
  const shown = rows.slice(0, rowsShown).map(rowWords);
  return [
    ...(shown.length === 0 ? [] : ['The first rows of harvest.csv:\n', aligned(shown)]),
    `${counted(rows.length, 'row')} from ${counted(used.size, 'cell')}; ${unusedWords(notUsed.length)}\n`,
    aligned(notUsed.map(({ cell, text, why }) => [cell, short(text), why])),
    ...remarks.map((remark) => `${remark}\n`),
  ].join('');
}

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

function unusedWords(count: number): string {
  if (count === 0) return 'every cell is used';
  return count === 1 ? '1 cell is not used:' : `${count} cells are not used:`;
}

function rowWords({ keys, values, status, levels }: TakenRow): string[] {
  const { container, row, column, plant, cut, date } = keys;
  return [
    `${container} ${row}-${column}`,
    plant === '' ? '' : `plant ${plant}`,
    cut === '' ? '' : `cut ${cut}`,
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
