import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import { positionInWords, whereOf } from '../grid.ts';
import type { Spot } from '../position-cells.ts';

const rule: Rule = {
  rule: 'position-not-planted',
  severity: 'error',
  acceptable: false,
  title: 'Position not in the layout',
  meaning: 'The harvest has a row for a position at which layout.csv has no plant.',
  example: 'T1 row 2 column 3 is not in layout.csv',
};
export default rule;

export function reportPositionNotPlanted(
  report: Report,
  table: Table,
  row: CsvRow,
  spot: Spot,
  hasLayout: boolean,
): void {
  const message = say(
    hasLayout
      ? '{position} is not in layout.csv, so nothing was planted there; correct the position or the layout'
      : '{position} has no treatment in trial.yaml, so nothing was planted there; correct the position or the layout',
    { position: positionInWords(spot) },
  );
  report(rule, {
    file: table.file,
    place: table.place(row, 'container'),
    found: positionInWords(spot),
    message,
    where: whereOf(spot),
  });
}
