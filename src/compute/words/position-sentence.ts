import type { Findings, PositionEffects } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { formatQuantity } from '../format/format-quantity.ts';
import { digitsFor } from '../tables/treatment-summary.ts';
import { tell } from './tell.ts';
import type { Words } from './words.ts';

/** How much a container's weights change from one side of the grid to the other. */
interface Change {
  container: string;
  along: 'rows' | 'columns';
  amount: number;
}

/**
 * How large effects of place are beside the difference between treatments: the widest change from one side
 * of a container to the other, and the widest difference between treatment means. Null where either is unknown.
 */
export function positionSentence(trial: Trial, findings: Findings): Words | null {
  const [first] = findings.position;
  if (!first) return null;
  const { measure, cut } = first;
  const changes = findings.position
    .filter((each) => each.measure === measure && each.cut === cut)
    .flatMap((each) => changesOf(trial, each));
  const described =
    cut === 'all'
      ? findings.treatments
      : (findings.treatments_by_cut.find((each) => each.cut === cut)?.treatments ?? []);
  const means = described.flatMap((each) => each[measure]?.mean ?? []);
  const widest = changes.sort((a, b) => b.amount - a.amount)[0];
  if (!widest || means.length < 2) return null;
  const { unit } = findings.variable;
  const digits = digitsFor(
    trial,
    described.flatMap((each) => each[measure] ?? []),
  );
  const difference = Math.max(...means) - Math.min(...means);
  const values = {
    change: formatQuantity(widest.amount, unit, digits),
    container: widest.container,
    difference: formatQuantity(difference, unit, digits),
  };
  return widest.along === 'rows'
    ? tell(
        'From one side of a container to the other, weights changed by up to {change} ({container}, along the rows); the widest difference between treatments is {difference}.',
        values,
      )
    : tell(
        'From one side of a container to the other, weights changed by up to {change} ({container}, along the columns); the widest difference between treatments is {difference}.',
        values,
      );
}

function changesOf(trial: Trial, { container, rows, columns }: PositionEffects): Change[] {
  const grid = trial.metadata.containers.find(({ id }) => id === container);
  if (!grid) return [];
  const change = (along: Change['along'], slope: number | null, count: number): Change[] =>
    slope === null ? [] : [{ container, along, amount: Math.abs(slope) * (count - 1) }];
  return [...change('rows', rows.slope, grid.rows), ...change('columns', columns.slope, grid.columns)];
}
