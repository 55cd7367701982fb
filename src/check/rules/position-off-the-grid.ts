import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import type { Container } from '../../model/trial.ts';

const rule: Rule = {
  rule: 'position-off-the-grid',
  severity: 'error',
  acceptable: false,
  title: 'Position off the grid',
  meaning: 'The container has fewer rows or columns than the row says.',
  example: 'T1 has 3 rows, so there is no row 4',
};
export default rule;

export function reportOffTheGrid(
  report: Report,
  table: Table,
  row: CsvRow,
  container: Container,
  at: { row: number; column: number },
): void {
  for (const [name, size] of [
    ['row', container.rows],
    ['column', container.columns],
  ] as const) {
    const value = at[name];
    if (value >= 1 && value <= size) continue;
    report(rule, {
      file: table.file,
      place: table.place(row, name),
      found: String(value),
      expected: `1 to ${String(size)}`,
      message: `${container.id} has ${String(size)} ${name}${size === 1 ? '' : 's'}, so there is no ${name} ${String(value)}`,
      where: `${container.id} ${String(at.row)} ${String(at.column)}`,
    });
  }
}
