import { say, sayCount } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';

const rule: Rule = {
  rule: 'unknown-cut',
  severity: 'error',
  acceptable: false,
  title: 'Cut without a date',
  meaning: 'Each cut has its date in trial.yaml, in order; a cut beyond them has none.',
  example: 'cut is 3, but dates.cuts in trial.yaml has 2 dates',
};
export default rule;

export function reportUnknownCut(
  report: Report,
  table: Table,
  row: CsvRow,
  cut: number,
  cuts: number,
  where: string,
): void {
  report(rule, {
    file: table.file,
    place: table.place(row, 'cut'),
    found: String(cut),
    expected: say('{minimum} to {maximum}', { minimum: 1, maximum: cuts }),
    message: sayCount(
      cuts,
      'cut is {cut}, but dates.cuts in trial.yaml has {count} date; add the date of the cut, or correct the number',
      'cut is {cut}, but dates.cuts in trial.yaml has {count} dates; add the date of the cut, or correct the number',
      { cut },
    ),
    where,
  });
}
