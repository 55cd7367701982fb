import harvest from '../../schemas/harvest.table.json' with { type: 'json' };
import layout from '../../schemas/layout.table.json' with { type: 'json' };
import readings from '../../schemas/readings.table.json' with { type: 'json' };
import summary from '../../schemas/summary.table.json' with { type: 'json' };
import weights from '../../schemas/weights.table.json' with { type: 'json' };
import type { TrialMetadata } from '../model/trial.ts';
import { guardedText } from './formula-guard.ts';
import { publishedUnit } from './published-unit.ts';
import { unitCodes } from './unit-codes.ts';

export interface Constraints {
  required?: boolean;
  minimum?: number;
  maximum?: number;
  enum?: string[];
}

/** A column, in Table Schema's vocabulary; `unit` (a UCUM code) and `rdfType` are custom and common there. */
export interface Field {
  name: string;
  title?: string;
  type: 'string' | 'integer' | 'number' | 'date';
  description: string;
  example?: string;
  unit?: string;
  rdfType?: string;
  constraints?: Constraints;
}

export interface ForeignKey {
  fields: string[];
  reference: { resource: string; fields: string[] };
}

/** A table of `schemas/*.table.json`; `forEach` says that the column stands once for each factor or variable. */
export interface TableSource {
  name: string;
  title: string;
  description: string;
  fields: (Field & { forEach?: 'factor' | 'variable' })[];
  missingValues: string[];
  needed: string[];
  primaryKey: string[];
  foreignKeys?: ForeignKey[];
}

/** The single source of the columns: the checks, the dictionary and the published metadata all read these. */
export const tableSources = { harvest, layout, readings, weights, summary } as Record<
  'harvest' | 'layout' | 'readings' | 'weights' | 'summary',
  TableSource
>;

export type TableName = keyof typeof tableSources;

/** A level's id as the table writes it: in our own tables nothing leaves that a spreadsheet would run. */
const levelIn = (name: TableName, id: string): string =>
  name === 'weights' || name === 'summary' ? guardedText(id) : id;

function factorFields(name: TableName, metadata: TrialMetadata, source: Field): Field[] {
  return (metadata.factors ?? []).map((factor) => ({
    ...source,
    name: factor.id,
    title: factor.name,
    example: levelIn(name, factor.levels[0]?.id ?? ''),
    constraints: { ...source.constraints, enum: factor.levels.map((level) => levelIn(name, level.id)) },
  }));
}

function variableFields(metadata: TrialMetadata, source: Field): Field[] {
  return metadata.variables.map((variable) => {
    const unit = publishedUnit(variable);
    return {
      ...source,
      name: variable.id,
      title: variable.name,
      description: `${variable.name} of each ${variable.of}, ${variable.kind}. ${source.description}`,
      ...(unitCodes(unit) === null ? {} : { unit }),
      ...(variable.trait === undefined
        ? {}
        : { rdfType: `http://purl.obolibrary.org/obo/${variable.trait.replace(':', '_')}` }),
      ...(unit === 'g' ? { constraints: { minimum: 0 } } : {}),
    };
  });
}

function expanded(
  name: TableName,
  metadata: TrialMetadata,
  { forEach, ...source }: TableSource['fields'][number],
): Field[] {
  if (forEach === 'factor') return factorFields(name, metadata, source);
  if (forEach === 'variable') return variableFields(metadata, source);
  if (source.unit !== '{primary}') return [source];
  const [primary] = metadata.variables;
  const unit = primary === undefined ? '1' : publishedUnit(primary);
  if (unitCodes(unit) !== null) return [{ ...source, unit }];
  const plain = { ...source };
  delete plain.unit;
  return [plain];
}

/** The columns of a table as this trial has them: one for each of its factors and variables. */
export function fieldsOf(name: TableName, metadata: TrialMetadata): Field[] {
  return tableSources[name].fields.flatMap((field) => expanded(name, metadata, field));
}
