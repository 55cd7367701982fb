import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import { positionInWords, whereOf } from '../grid.ts';

const rule: Rule = {
  rule: 'position-twice',
  severity: 'error',
  acceptable: false,
  title: 'Position twice',
  meaning: 'A position stands once in the layout; twice means that one of the two is another position.',
  example: 'T1 row 2 column 3 stands in line 7 already',
};
export default rule;

export function reportPositionTwice(
  report: Report,
  table: Table,
  row: CsvRow,
  at: { container: string; row: number; column: number },
  firstLine: number,
): void {
  const message = say('{position} stands in line {line} already; each position has one row', {
    position: positionInWords(at),
    line: firstLine,
  });
  report(rule, {
    file: table.file,
    place: table.place(row, 'container'),
    found: positionInWords(at),
    message,
    where: whereOf(at),
  });
}
