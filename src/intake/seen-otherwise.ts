import { say } from '../model/say.ts';
import type { Workbook } from '../model/workbook.ts';
import { columnLetters } from './cell-name.ts';
import type { Mapping } from './mapping.ts';

/** What a grower who looks at the spreadsheet does not see, and is read all the same. */
export function seenOtherwise({ sheets }: Workbook, mappings: readonly Mapping[]): string[] {
  return mappings.flatMap(({ sheet: name, lines, isTurned, uses }) => {
    const sheet = sheets.find((one) => one.name === name);
    if (sheet === undefined) return [];
    const { rows, columns, isWhole } = sheet.hidden;
    const isLine = (index: number): boolean => index >= lines[0] && index <= lines[1];
    const inTable = isTurned
      ? [...rows.filter((row) => uses.has(row)).map(rowName), ...columns.filter(isLine).map(columnLetters)]
      : [
          ...rows.filter(isLine).map(rowName),
          ...columns.filter((column) => uses.has(column)).map(columnLetters),
        ];
    const results = sheet.rows.flat().filter((cell) => cell?.isFormula === true).length;
    const where = name === '' ? say('the table') : name;
    return [
      ...(isWhole
        ? [say('Sheet {sheet} is hidden in the spreadsheet, and read all the same.', { sheet: where })]
        : []),
      ...(inTable.length === 0
        ? []
        : [
            say('Hidden in {sheet}, as by a filter, and read all the same: {places}.', {
              sheet: where,
              places: inTable.slice(0, 20).join(', ') + (inTable.length > 20 ? ' …' : ''),
            }),
          ]),
      ...(results === 0
        ? []
        : [
            say(
              'Cells of {sheet} that are formulas: {count}. What they came to when the file was saved is taken.',
              {
                count: results,
                sheet: where,
              },
            ),
          ]),
    ];
  });
}

const rowName = (row: number): string => String(row + 1);
