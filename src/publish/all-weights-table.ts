import type { Trial, Variable } from '../model/trial.ts';
import type { Table } from './csv.ts';
import { publishedUnit } from './published-unit.ts';
import { weightsTable } from './weights-table.ts';

/**
 * Which column of all-weights.csv each variable of each trial goes into. It is the variable's id, but
 * `id [unit]` for each unit where trials measured it in different ones or where another trial has a factor
 * of that id: a column never mixes what cannot be compared.
 */
export function sharedVariableColumns(trials: readonly Trial[]): (variable: Variable) => string {
  const factors = new Set(trials.flatMap((trial) => (trial.metadata.factors ?? []).map((each) => each.id)));
  const units = new Map<string, Set<string>>();
  for (const variable of trials.flatMap((trial) => trial.metadata.variables)) {
    const known = units.get(variable.id) ?? new Set();
    units.set(variable.id, known.add(publishedUnit(variable)));
  }
  return (variable) =>
    factors.has(variable.id) || (units.get(variable.id)?.size ?? 0) > 1
      ? `${variable.id} [${publishedUnit(variable)}]`
      : variable.id;
}

/**
 * The weights of all finished trials in one table, `trial` first, in the order of the trials' ids. Its
 * columns are the union of the trials' factors and of their variables, each in the order of the alphabet so
 * that a new trial moves none; a cell is empty where a trial has no such factor or variable.
 */
export function allWeightsTable(trials: readonly Trial[]): Table {
  const inOrder = [...trials].sort((a, b) => (a.id < b.id ? -1 : 1));
  const columnOf = sharedVariableColumns(inOrder);
  const union = (names: readonly string[]): string[] => [...new Set(names)].sort();
  const factors = union(inOrder.flatMap(({ metadata }) => (metadata.factors ?? []).map((each) => each.id)));
  const variables = union(inOrder.flatMap(({ metadata }) => metadata.variables.map(columnOf)));
  const columns = [
    ...['trial', 'container', 'row', 'column', 'plot', 'block'],
    ...factors,
    ...['cut', 'plant'],
    ...variables,
    ...['status', 'pot_total', 'remark'],
  ];
  const rows = inOrder.flatMap((trial) => {
    const table = weightsTable(trial);
    const named = new Map(trial.metadata.variables.map((variable) => [variable.id, columnOf(variable)]));
    const from = new Map(table.columns.map((column, index) => [named.get(column) ?? column, index]));
    const sources = columns.map((column) => from.get(column));
    return table.rows.map((row) =>
      sources.map((source, index) => {
        if (index === 0) return trial.id;
        return source === undefined ? null : (row[source] ?? null);
      }),
    );
  });
  return { columns, rows };
}
