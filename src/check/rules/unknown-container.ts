import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import { didYouMean } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unknown-container',
  severity: 'error',
  acceptable: false,
  title: 'Unknown container',
  meaning: 'The row names a container that trial.yaml does not list.',
  example: '"T12" is no container of trial.yaml; did you mean "T1"?',
};
export default rule;

export function reportUnknownContainer(
  report: Report,
  table: Table,
  row: CsvRow,
  container: string,
  known: readonly string[],
): void {
  const guess = didYouMean(container, known);
  const list = known.length <= 12 ? `; containers: ${known.join(', ')}` : '';
  const isTotals = /^(grand |sub)?(total|sum|mean|average)/i.test(container);
  const is =
    container === '' ? 'the container is empty' : `${showText(container)} is no container of trial.yaml`;
  report(rule, {
    file: table.file,
    place: table.place(row, 'container'),
    found: container,
    message: isTotals ? `${is}; delete the line of totals` : `${is}${guess === '' ? list : guess}`,
  });
}
