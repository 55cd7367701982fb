import { tableFromIPC } from 'apache-arrow';
import { parquetMetadata, parquetReadObjects } from 'hyparquet';
import Papa from 'papaparse';
import { readParquet } from 'parquet-wasm';
import { describe, expect, test } from 'vitest';
import { publishedFiles, siteFiles } from '../../src/publish/files.ts';
import { full, library } from './example.ts';
import { acrossTrials, datasets, published } from './published.ts';

const variables = datasets.flatMap(([, { trial }]) => trial.metadata.variables.map(({ id }) => id));
const numeric = new Set(['row', 'column', 'cut', 'plant', 'pot_total', ...variables]);

/** The cells of a CSV file, numbers as numbers and empty cells as null: what Parquet should hold. */
function typed(csv: string): Record<string, string | number | null>[] {
  const { data } = Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true });
  return data.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([name, cell]) => [
        name,
        cell === '' ? null : numeric.has(name) ? Number(cell) : cell,
      ]),
    ),
  );
}

const emptyAsNull = (rows: Record<string, unknown>[]): Record<string, unknown>[] =>
  rows.map((row) =>
    Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, cell === '' ? null : cell])),
  );

const bufferOf = (bytes: Uint8Array): ArrayBuffer => Uint8Array.from(bytes).buffer;

/** Rows by the reader that belongs to the writer. */
const byCompanion = async (bytes: Uint8Array): Promise<Record<string, unknown>[]> =>
  emptyAsNull(await parquetReadObjects({ file: bufferOf(bytes) }));

/** Rows by an engine of another make: Apache Arrow's, written in Rust. */
function byArrow(bytes: Uint8Array): Record<string, unknown>[] {
  const table = tableFromIPC(readParquet(bytes).intoIPCStream());
  return emptyAsNull(table.toArray().map((row: { toJSON(): Record<string, unknown> }) => row.toJSON()));
}

describe.each(datasets)('weights.parquet of %s', (_name, item, of) => {
  const { bytes } = publishedFiles(item, of).find((file) => file.name === 'weights.parquet')!;
  const expected = typed(published('weights.csv', item, of));

  test('holds what weights.csv holds, by two readers', async () => {
    expect(await byCompanion(bytes)).toEqual(expected);
    expect(byArrow(bytes)).toEqual(expected);
  });
});

describe('weights.parquet', () => {
  const { bytes } = publishedFiles(full, library).find((file) => file.name === 'weights.parquet')!;

  test('says what each column means, with its unit', () => {
    const pairs = parquetMetadata(bufferOf(bytes)).key_value_metadata ?? [];
    const said = new Map(pairs.map(({ key, value }) => [key, value]));
    expect(said.get('description:fresh_weight')).toMatch(
      /^Fresh weight of each plant, measured\. .* Unit: g\.$/,
    );
    const schema = JSON.parse(said.get('table_schema') ?? '') as { fields: { name: string }[] };
    expect(schema.fields.map((field) => field.name)).toEqual(
      published('weights.csv', full, library).split('\n')[0]?.split(','),
    );
  });
});

describe('data/all-weights.parquet', () => {
  const bytesOf = (of: typeof library): Uint8Array =>
    siteFiles(of).find((file) => file.name === 'data/all-weights.parquet')!.bytes;

  test('holds what all-weights.csv holds', async () => {
    const expected = typed(acrossTrials('data/all-weights.csv', library));
    expect(await byCompanion(bytesOf(library))).toEqual(expected);
    expect(byArrow(bytesOf(library))).toEqual(expected);
  });
  test('is not written where there is no trial yet: some engines cannot read a table without rows', () => {
    expect(siteFiles({ ...library, trials: [] }).map((file) => file.name)).not.toContain(
      'data/all-weights.parquet',
    );
  });
});
