import { say } from '../../model/say.ts';
import type { Csv } from '../../read/csv.ts';
import { trimmed } from '../number.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'turned-table',
  severity: 'error',
  acceptable: false,
  title: 'Table turned on its side',
  meaning:
    'The headings stand beneath each other in the first column, so that each plant or reading is a column. Rows and columns have to be exchanged, which spreadsheets call transposing.',
  example: 'the headings stand in the first column; exchange rows and columns',
};
export default rule;

/** True where all needed headings stand beneath each other in the first column, and not beside each other. */
export function isTurned(csv: Csv, wanted: readonly string[]): boolean {
  const beneath = new Set<string>();
  let beside = 0;
  csv.read(({ cells }) => {
    if (beneath.size === 0) beside = cells.map(trimmed).filter((cell) => wanted.includes(cell)).length;
    beneath.add(trimmed(cells[0] ?? ''));
  });
  return wanted.length > 1 && beside < 2 && wanted.every((heading) => beneath.has(heading));
}

export function reportTurned(report: Report, file: string, first: string): void {
  const message = say(
    'the headings stand beneath each other in the first column; exchange rows and columns (a spreadsheet calls it to transpose), so that they stand in the first line',
  );
  report(rule, { file, place: { line: 1, column: 1 }, found: first, message });
}
