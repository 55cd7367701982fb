import type { Problem } from '../model/problem.ts';
import { cellName } from './cell-name.ts';

/** The kinds of faults that keep a spreadsheet from being brought in. */
export type IntakeRule =
  | 'spreadsheet-not-read'
  | 'spreadsheet-without-table'
  | 'spreadsheet-mapping'
  | 'spreadsheet-value'
  | 'spreadsheet-place'
  | 'spreadsheet-date'
  | 'spreadsheet-level'
  | 'spreadsheet-joined'
  | 'spreadsheet-twice'
  | 'spreadsheet-layout';

/** Where in a spreadsheet something stands; from 0. */
export interface SheetPlace {
  file: string;
  sheet: string;
  row: number;
  column: number;
}

/** A cell as a grower finds it: `Harvest!D7`, or `D7` where the file has one sheet without a name. */
export const inSheet = (sheet: string, cell: string): string => (sheet === '' ? cell : `${sheet}!${cell}`);

export const cellInWords = ({ sheet, row, column }: SheetPlace): string =>
  inSheet(sheet, cellName(row, column));

/** A fault in a spreadsheet, with the row for a line and the column for a column. */
export function intakeProblem(
  rule: IntakeRule,
  place: SheetPlace,
  message: string,
  { found = null, expected = null }: { found?: string | null; expected?: string | null } = {},
): Problem {
  return {
    rule,
    severity: 'error',
    file: place.file,
    line: place.row + 1,
    column: place.column + 1,
    found,
    expected,
    message: `${cellInWords(place)}: ${message}`,
    hint: null,
    where: null,
  };
}
