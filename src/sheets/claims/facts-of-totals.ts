import { gramsIn } from '../../model/units.ts';
import type { Findings } from '../../model/findings.ts';
import { say } from '../../model/say.ts';
import type { HarvestRecord, Treatment, Trial } from '../../model/trial.ts';
import type { Fact } from './fact.ts';

/** What each treatment, each container and the whole trial gave in all, and what single plants weighed. */
export function totalFacts(trial: Trial, findings: Findings, name: (treatment: Treatment) => string): Fact[] {
  const id = findings.variable.id;
  const total = (words: () => string, value: number | null, treatments: readonly Treatment[] = []): Fact[] =>
    value === null
      ? []
      : [{ value, dimension: 'g', kind: 'total', words, treatments, measure: null, component: null }];
  const containers = trial.metadata.containers.flatMap(({ id: container, weighed_total: weighed }) => {
    const rows = trial.harvest.filter((row) => row.container === container);
    const cuts = [...new Set(rows.map(({ cut }) => cut))];
    const ofCuts =
      cuts.length < 2
        ? []
        : cuts.flatMap((cut) =>
            total(
              () => say('the total of {container} at cut {cut}', { container, cut }),
              sumOf(
                rows.filter((row) => row.cut === cut),
                id,
              ),
            ),
          );
    const crate =
      weighed === undefined
        ? []
        : total(
            () => say('the total of {container} as weighed', { container }),
            inGrams(weighed.value, weighed.unit),
          );
    return [
      ...total(() => say('the total of {container}', { container }), sumOf(rows, id)),
      ...ofCuts,
      ...crate,
    ];
  });
  const treatments = findings.treatments.map(({ treatment, per_pot: pots }) => {
    const known = pots !== null && pots.mean !== null && (pots.missing ?? 0) === 0;
    return { treatment, value: known ? pots.n * pots.mean! : null };
  });
  const whole = treatments.every(({ value }) => value !== null)
    ? treatments.reduce((sum, { value }) => sum + value!, 0)
    : null;
  return [
    ...containers,
    ...treatments.flatMap(({ treatment, value }) =>
      total(() => say('the total of {treatment}', { treatment: name(treatment) }), value, [treatment]),
    ),
    ...total(() => say('the total of the trial'), whole),
    ...trial.harvest.flatMap((row) => single(row, id, trial)),
  ];
}

/** Null where a weight is not known. */
function sumOf(rows: readonly HarvestRecord[], variable: string): number | null {
  if (rows.some(({ status }) => status === 'not weighed')) return null;
  return rows.reduce((sum, { values }) => sum + (values[variable] ?? 0), 0);
}

const inGrams = (value: number, unit: string): number | null => {
  const grams = gramsIn[unit];
  return grams === undefined ? null : value * grams;
};

function single(row: HarvestRecord, variable: string, trial: Trial): Fact[] {
  const value = row.values[variable] ?? null;
  if (value === null) return [];
  const position = trial.positions.find(
    (each) => each.container === row.container && each.row === row.row && each.column === row.column,
  );
  const words = (): string =>
    say('the weight at {container} {row} {column}', {
      container: row.container,
      row: row.row,
      column: row.column,
    });
  const treatments = position === undefined ? [] : [position.treatment];
  return [{ value, dimension: 'g', kind: 'single', words, treatments, measure: null, component: null }];
}
