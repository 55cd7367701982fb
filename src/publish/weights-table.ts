import type { HarvestRecord, Position, Trial } from '../model/trial.ts';
import type { Cell, Table } from './csv.ts';

const place = (at: { container: string; row: number; column: number }): string =>
  `${at.container}\t${String(at.row)}\t${String(at.column)}`;

const pot = (record: HarvestRecord): string => `${place(record)}\t${String(record.cut)}`;

/**
 * The total of each pot at each cut whose plants were not weighed singly: weighed whole, or with a plant
 * whose own weight is unknown. Elsewhere the plants' own weights say it all.
 */
function potTotals(harvest: readonly HarvestRecord[]): Map<string, number> {
  const notSingly = new Set(
    harvest
      .filter((record) => record.plant === null || record.status === 'not weighed')
      .map((record) => pot(record)),
  );
  const totals = new Map<string, number>();
  for (const record of harvest) {
    if (record.potTotal !== null && notSingly.has(pot(record))) totals.set(pot(record), record.potTotal);
  }
  return totals;
}

/**
 * The harvest joined with the layout: one row for each row of the harvest, in its order, weights in g.
 * A pot's total stands on its first row only, so that a sum of the column is right.
 */
export function weightsTable(trial: Trial): Table {
  const factors = (trial.metadata.factors ?? []).map((factor) => factor.id);
  const variables = trial.metadata.variables.map((variable) => variable.id);
  const positions = new Map<string, Position>(trial.positions.map((position) => [place(position), position]));
  const totals = potTotals(trial.harvest);
  const rows = trial.harvest.map((record): Cell[] => {
    const position = positions.get(place(record));
    const total = totals.get(pot(record)) ?? null;
    totals.delete(pot(record));
    return [
      record.container,
      record.row,
      record.column,
      position?.plot ?? null,
      position?.block ?? null,
      ...factors.map((factor) => position?.treatment[factor] ?? null),
      record.cut,
      record.plant,
      ...variables.map((variable) => record.values[variable] ?? null),
      record.status,
      total,
      record.remark,
    ];
  });
  const before = ['container', 'row', 'column', 'plot', 'block'];
  return {
    columns: [...before, ...factors, 'cut', 'plant', ...variables, 'status', 'pot_total', 'remark'],
    rows,
  };
}
