import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { publishedFiles } from '../../src/publish/files.ts';
import { library } from './example.ts';
import { expanded } from './linked-data.ts';
import { acrossTrials, datasets, published, publishedJson } from './published.ts';
import { standardsAreHere } from './standards.ts';

interface Datatype {
  base: string;
  format?: string | { decimalChar: string };
  minimum?: number;
}
interface Metadata {
  url: string;
  dialect: { delimiter: string };
  tableSchema: {
    columns: { name: string; titles: string; required?: boolean; datatype: string | Datatype }[];
    primaryKey?: string[];
  };
}

const forms: Record<string, RegExp> = {
  integer: /^[+-]?\d+$/,
  number: /^[+-]?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/,
  date: /^\d{4}-\d{2}-\d{2}$/,
  string: /^/,
};

/** Converters do not validate: titles, datatypes, required and null are checked here cell by cell. */
function check(metadata: Metadata, csv: string): void {
  const { data } = Papa.parse<string[]>(csv.replace(/^\uFEFF/, ''), {
    delimiter: metadata.dialect.delimiter,
    skipEmptyLines: 'greedy',
  });
  const { columns, primaryKey = [] } = metadata.tableSchema;
  const [header, ...rows] = data;
  expect(header).toEqual(columns.map((column) => column.titles));
  const names = columns.map((column) => column.name);
  expect(new Set(names).size).toBe(names.length);
  for (const name of names)
    expect(name).toMatch(/^(?:[A-Za-z0-9.]|%[0-9A-F]{2})(?:[A-Za-z0-9_.]|%[0-9A-F]{2})*$/);
  for (const key of primaryKey) expect(names).toContain(key);
  for (const row of rows) {
    for (const [index, { required = false, datatype }] of columns.entries()) {
      const cell = row[index] ?? '';
      if (cell === '') {
        expect(required, `${metadata.url}: ${names[index]} is empty`).toBe(false);
        continue;
      }
      const { base, format, minimum } =
        typeof datatype === 'string' ? ({ base: datatype } as Datatype) : datatype;
      expect(cell).toMatch(forms[base]!);
      if (minimum !== undefined) expect(Number(cell)).toBeGreaterThanOrEqual(minimum);
      if (base === 'string' && typeof format === 'string')
        expect(cell).toMatch(new RegExp(`^(?:${format})$`));
    }
  }
}

describe.each(datasets)('CSV on the Web, %s', (_name, item, of) => {
  const tables = publishedFiles(item, of).filter((file) => file.name.endsWith('.csv'));

  test.each(tables.map((file) => file.name))('%s-metadata.json describes every cell', (name) => {
    const metadata = publishedJson(`${name}-metadata.json`, item, of) as Metadata;
    expect(metadata.url).toBe(name);
    check(metadata, published(name, item, of));
  });

  test.skipIf(!standardsAreHere).each(tables.map((file) => file.name))(
    '%s-metadata.json uses terms that the context defines (needs ../shared/standards/csvw)',
    async (name) => {
      expect(await expanded(publishedJson(`${name}-metadata.json`, item, of))).toHaveLength(1);
    },
  );
});

test('all-weights.csv-metadata.json describes every cell', () => {
  const metadata = JSON.parse(acrossTrials('data/all-weights.csv-metadata.json', library)) as Metadata;
  check(metadata, acrossTrials('data/all-weights.csv', library));
});
