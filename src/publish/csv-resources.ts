import type { Trial, TrialMetadata } from '../model/trial.ts';
import { csvHeader } from './csv-header.ts';
import type { Cell } from './csv.ts';
import type { PublishedFile } from './published-file.ts';
import { ucumUnit } from './unit-codes.ts';
import { fieldsOf, tableSources, type Field, type ForeignKey, type TableName } from './table-schema.ts';

/** One published CSV file with what its columns hold. */
export interface CsvResource {
  name: TableName;
  file: PublishedFile;
  title: string;
  description: string;
  /** In the order of the file's own header. */
  fields: readonly Field[];
  /** No two rows agree in these columns and none is empty; empty where the file has no such columns. */
  primaryKey: readonly string[];
  foreignKeys: readonly ForeignKey[];
  missingValues: readonly string[];
  delimiter: string;
  decimal: string;
}

type Rows = readonly Readonly<Record<string, Cell>>[];

/** The harvest's columns under the grower's own names and units, as trial.yaml maps them. */
function harvestFields(metadata: TrialMetadata): Field[] {
  const mapped = metadata.harvest?.columns ?? {};
  const variables = new Map(metadata.variables.map((variable) => [variable.id, variable.unit]));
  const primary = metadata.variables[0]?.unit;
  return fieldsOf('harvest', metadata).map((field) => {
    const own = field.name === 'pot_total' ? primary : variables.get(field.name);
    const unit = mapped[field.name]?.unit ?? own;
    const asGiven: Field = { ...field, name: mapped[field.name]?.column ?? field.name };
    if (unit === undefined) delete asGiven.unit;
    else asGiven.unit = ucumUnit(unit);
    return asGiven;
  });
}

/** The delimiter that the file's header is written with: the grower's where trial.yaml says one, else a comma. */
function delimiterOf(name: TableName, metadata: TrialMetadata, bytes: Uint8Array): string {
  const own = metadata.harvest?.delimiter;
  const given = name === 'harvest' || name === 'layout' || name === 'readings';
  if (!given || own === undefined) return ',';
  return csvHeader(bytes, own).length > 1 ? own : ',';
}

/** The columns among `wanted` that tell every row apart; none where a cell of them is empty or rows agree. */
function keyOf(wanted: readonly string[], rows: Rows): string[] {
  const present = wanted.filter((name) => rows.some((row) => (row[name] ?? null) !== null));
  const whole = present.every((name) => rows.every((row) => (row[name] ?? null) !== null));
  const different = new Set(rows.map((row) => JSON.stringify(present.map((name) => row[name]))));
  return whole && present.length > 0 && different.size === rows.length ? present : [];
}

function rowsOf(name: TableName, trial: Trial): Rows {
  if (name === 'layout')
    return trial.positions.map(({ container, row, column }) => ({ container, row, column }));
  if (name === 'readings') return trial.readings.map(({ date, container }) => ({ date, container }));
  if (name === 'summary') return [];
  return trial.harvest.map(({ container, row, column, cut, plant }) => ({
    container,
    row,
    column,
    cut,
    plant,
  }));
}

function resource(name: TableName, trial: Trial, file: PublishedFile, hasLayout: boolean): CsvResource {
  const { metadata } = trial;
  const source = tableSources[name];
  const delimiter = delimiterOf(name, metadata, file.bytes);
  const header = csvHeader(file.bytes, delimiter);
  const known = new Map(
    (name === 'harvest' ? harvestFields(metadata) : fieldsOf(name, metadata)).map((field) => [
      field.name,
      field,
    ]),
  );
  const fields = header.map(
    (column): Field =>
      known.get(column) ?? { name: column, type: 'string', description: "A column of the grower's own." },
  );
  const factors = (metadata.factors ?? []).map((factor) => factor.id);
  const wanted = source.primaryKey.flatMap((column) => (column === '{factor}' ? factors : [column]));
  const key = name === 'summary' ? wanted : keyOf(wanted, rowsOf(name, trial));
  return {
    name,
    file,
    title: source.title,
    description: source.description,
    fields,
    primaryKey: key.every((column) => header.includes(column)) ? key : [],
    foreignKeys: hasLayout
      ? (source.foreignKeys ?? []).filter((each) => each.fields.every((column) => header.includes(column)))
      : [],
    missingValues: source.missingValues,
    delimiter,
    decimal: (name === 'harvest' ? metadata.harvest?.decimal : undefined) ?? '.',
  };
}

/** Whether each position of the trial stands in a row of its own in layout.csv. */
function layoutNamesPositions(files: readonly PublishedFile[]): boolean {
  const layout = files.find((file) => file.name === 'layout.csv');
  if (layout === undefined) return false;
  const header = csvHeader(layout.bytes, ',');
  return ['container', 'row', 'column'].every((column) => header.includes(column));
}

/** The CSV files of a trial, each with its columns as they stand in it. */
export function csvResources(trial: Trial, files: readonly PublishedFile[]): CsvResource[] {
  const hasLayout = layoutNamesPositions(files);
  return (Object.keys(tableSources) as TableName[]).flatMap((name) => {
    const file = files.find((each) => each.name === `${name}.csv`);
    return file === undefined ? [] : [resource(name, trial, file, hasLayout)];
  });
}
