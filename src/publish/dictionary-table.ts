import type { TrialMetadata } from '../model/trial.ts';
import type { Cell, Table } from './csv.ts';
import { fieldsOf, tableSources, type Field, type TableName } from './table-schema.ts';

function allowed({ constraints = {} }: Field): string | null {
  const { enum: values, minimum, maximum } = constraints;
  if (values !== undefined) return values.join('; ');
  const limits = [
    minimum === undefined ? '' : `at least ${String(minimum)}`,
    maximum === undefined ? '' : `at most ${String(maximum)}`,
  ];
  return limits.filter((limit) => limit !== '').join(', ') || null;
}

/** The columns of the trial's tables: what each means, its unit, and what it may hold. */
export function dictionaryTable(metadata: TrialMetadata, names: readonly TableName[]): Table {
  return {
    columns: ['table', 'column', 'title', 'type', 'unit', 'meaning', 'allowed', 'missing'],
    rows: names.flatMap((name) =>
      fieldsOf(name, metadata).map((field): Cell[] => [
        name,
        field.name,
        field.title ?? null,
        field.type,
        field.unit ?? null,
        field.description,
        allowed(field),
        field.constraints?.required === true
          ? 'never'
          : tableSources[name].missingValues.map((code) => code || 'empty').join('; '),
      ]),
    ),
  };
}
