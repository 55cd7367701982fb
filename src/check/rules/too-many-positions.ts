import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import type { Container } from '../../model/trial.ts';

const rule: Rule = {
  rule: 'too-many-positions',
  severity: 'error',
  acceptable: false,
  title: 'More positions than can be',
  meaning:
    'Rows and columns of a container are counted positions, not lengths. A grid of a million positions is a slip of the pen.',
  example: 'T1 has 1000 rows and 1000 columns; are these centimetres?',
  check,
};
export default rule;

/** The most positions that all containers of a trial may have. */
const most = 500_000;

/** True where the containers have more positions than a trial may have. */
export function hasTooManyPositions(containers: readonly Pick<Container, 'rows' | 'columns'>[]): boolean {
  return containers.reduce((sum, { rows, columns }) => sum + rows * columns, 0) > most;
}

function check({ metadata }: Facts, report: Report): void {
  const containers = metadata.draft.containers ?? [];
  if (!hasTooManyPositions(containers)) return;
  const sizes = containers.map(({ rows, columns }) => rows * columns);
  const largest = sizes.indexOf(Math.max(...sizes));
  const { id, rows, columns } = containers[largest]!;
  const message = say(
    '{container} has {rows} rows and {columns} columns, and all containers more than {most} positions; rows and columns are counts of positions',
    { container: id, rows, columns, most },
  );
  report(rule, { file: 'trial.yaml', place: metadata.place(['containers', largest]), message, where: id });
}
