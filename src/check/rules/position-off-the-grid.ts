import { say, sayCount } from '../../model/say.ts';
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
    const values = { container: container.id, found: value };
    const message =
      name === 'row'
        ? sayCount(
            size,
            '{container} has {count} row, so there is no row {found}',
            '{container} has {count} rows, so there is no row {found}',
            values,
          )
        : sayCount(
            size,
            '{container} has {count} column, so there is no column {found}',
            '{container} has {count} columns, so there is no column {found}',
            values,
          );
    report(rule, {
      file: table.file,
      place: table.place(row, name),
      found: String(value),
      expected: say('{minimum} to {maximum}', { minimum: 1, maximum: size }),
      message,
      where: `${container.id} ${String(at.row)} ${String(at.column)}`,
    });
  }
}

/** Told once of a whole table. */
export function reportExchanged(
  report: Report,
  table: Table,
  row: CsvRow,
  { id, rows, columns }: Container,
  found: number,
): void {
  const message = say(
    'row and column are exchanged throughout: row {found} stands here, but {container} has rows: {rows} and columns: {columns} in trial.yaml; exchange the two headings, or the two numbers in trial.yaml',
    { found, container: id, rows, columns },
  );
  report(rule, { file: table.file, place: table.place(row, 'row'), found: String(found), message });
}
