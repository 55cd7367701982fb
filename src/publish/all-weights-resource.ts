import type { Trial } from '../model/trial.ts';
import type { CsvResource } from './csv-resources.ts';
import { sharedVariableColumns } from './all-weights-table.ts';
import type { PublishedFile } from './published-file.ts';
import { fieldsOf, tableSources, type Field } from './table-schema.ts';

const trialField: Field = {
  name: 'trial',
  title: 'Trial',
  type: 'string',
  description: 'The id of the trial that the row belongs to.',
  example: 'autumn-lettuce-2025',
  constraints: { required: true },
};

/** A column that not every trial has: what it demands in one trial does not hold of the whole. */
function withoutDemands(field: Field, name: string): Field {
  const loose: Field = { ...field, name };
  delete loose.constraints;
  delete loose.example;
  return loose;
}

function fieldFor(column: string, trials: readonly Trial[]): Field {
  if (column === 'trial') return trialField;
  const columnOf = sharedVariableColumns(trials);
  for (const { metadata } of trials) {
    const fields = fieldsOf('weights', metadata);
    const variable = metadata.variables.find((each) => columnOf(each) === column);
    const field = fields.find((each) => each.name === (variable?.id ?? column));
    if (field === undefined) continue;
    const shared = tableSources.weights.fields.some((each) => each.name === column);
    return shared ? field : withoutDemands(field, column);
  }
  return { name: column, type: 'string', description: '' };
}

/** all-weights.csv with what its columns hold. */
export function allWeightsResource(
  trials: readonly Trial[],
  columns: readonly string[],
  file: PublishedFile,
): Omit<CsvResource, 'name'> {
  return {
    file,
    title: 'Weights of all trials',
    description: `${tableSources.weights.description} The columns are the union of the trials' factors and variables; a cell is empty where a trial has no such column. A variable measured in several units has a column for each, with the unit in brackets.`,
    fields: columns.map((column) => fieldFor(column, trials)),
    primaryKey: [],
    foreignKeys: [],
    missingValues: tableSources.weights.missingValues,
    delimiter: ',',
    decimal: '.',
  };
}
