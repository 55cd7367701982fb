import { parquetWriteBuffer, type BasicType } from 'hyparquet-writer';
import type { Table } from './csv.ts';
import type { CsvResource } from './csv-resources.ts';
import { tableSchema } from './data-package.ts';
import { guardedText } from './formula-guard.ts';
import type { PublishedFile } from './published-file.ts';

const types: Record<string, BasicType> = {
  integer: 'INT32',
  number: 'DOUBLE',
  string: 'STRING',
  date: 'STRING',
};

/**
 * A table as Parquet: whole numbers as INT32, other numbers as DOUBLE, the rest as UTF-8 text; an empty cell
 * is null. What each column means stands in the file's own metadata, under `table_schema` as a Table Schema
 * and for each column under `description:<column>`. Text is guarded as in the CSV file.
 */
export function parquet(table: Table, csv: Omit<CsvResource, 'name' | 'file'>): Uint8Array {
  const columnData = csv.fields.map((field, index) => ({
    name: field.name,
    type: types[field.type] ?? 'STRING',
    data: table.rows.map((row) => {
      const cell = row[index] ?? null;
      return typeof cell === 'string' ? guardedText(cell) : cell;
    }),
  }));
  const buffer = parquetWriteBuffer({
    columnData,
    createdBy: 'tankside',
    kvMetadata: [
      { key: 'title', value: csv.title },
      { key: 'description', value: csv.description },
      { key: 'table_schema', value: JSON.stringify(tableSchema(csv)) },
      ...csv.fields.map((field) => ({
        key: `description:${field.name}`,
        value: field.unit === undefined ? field.description : `${field.description} Unit: ${field.unit}.`,
      })),
    ],
  });
  return new Uint8Array(buffer);
}

/** A table as a published Parquet file; none for a table without rows, which not every engine can read. */
export function parquetFile(
  name: string,
  description: string,
  table: Table,
  csv: Omit<CsvResource, 'name' | 'file'>,
): PublishedFile[] {
  if (table.rows.length === 0) return [];
  return [{ name, bytes: parquet(table, csv), mediaType: 'application/vnd.apache.parquet', description }];
}
