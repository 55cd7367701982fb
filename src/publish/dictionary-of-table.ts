import { say } from '../model/say.ts';
import type { DictionaryField } from './dictionary.ts';

/** What is read of a table schema (Table Schema's vocabulary). */
export interface TableSchema {
  fields: readonly {
    name: string;
    type: string;
    unit?: string;
    description: string;
    example?: string;
    constraints?: { minimum?: number; maximum?: number; enum?: readonly string[] };
  }[];
  needed: readonly string[];
}

/** `{factor}` and `{variable}` stand for as many columns as the trial has of them. */
const placeholders: Readonly<Record<string, string>> = {
  '{factor}': 'one column for each factor, by its id',
  '{variable}': 'one column for each variable, by its id',
};

/** The columns of a table, in order. */
export function fieldsOfTable(table: TableSchema): DictionaryField[] {
  return table.fields.map(({ name, type, unit, description, example, constraints }) => ({
    name: placeholders[name] === undefined ? name : say(placeholders[name]),
    kind: [say(type), inUnit(unit), limits(constraints)].filter(Boolean).join(', '),
    needed: table.needed.includes(name),
    meaning: say(description),
    example: example ?? '',
  }));
}

function inUnit(unit: string | undefined): string {
  if (unit === undefined) return '';
  return unit === '{primary}' ? say("in the primary variable's unit") : say('in {unit}', { unit });
}

function limits(constraints: TableSchema['fields'][number]['constraints']): string {
  if (constraints?.enum) return say('one of: {choices}', { choices: constraints.enum.join(', ') });
  if (constraints?.minimum !== undefined) return say('at least {limit}', { limit: constraints.minimum });
  return '';
}
