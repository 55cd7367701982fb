import type { Trial } from '../model/trial.ts';
import type { Cell, Table } from './csv.ts';

/** Every position of the trial with what was planted there, as the trial was read. */
export function layoutTable(trial: Trial): Table {
  const factors = (trial.metadata.factors ?? []).map((factor) => factor.id);
  return {
    columns: ['container', 'row', 'column', 'plot', 'block', ...factors, 'plants'],
    rows: trial.positions.map((position): Cell[] => [
      position.container,
      position.row,
      position.column,
      position.plot,
      position.block,
      ...factors.map((factor) => position.treatment[factor] ?? null),
      position.plants,
    ]),
  };
}
