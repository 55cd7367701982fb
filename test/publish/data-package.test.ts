import { Ajv, type AnySchemaObject } from 'ajv';
import formats from 'ajv-formats';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { publishedFiles, siteFiles } from '../../src/publish/files.ts';
import type { PublishedFile } from '../../src/publish/published-file.ts';
import { sha256 } from '../../src/publish/sha256.ts';
import { bareLibrary, full, library, text } from './example.ts';
import { acrossTrials, datasets, publishedJson } from './published.ts';
import { standardJson, standardsAreHere } from './standards.ts';

interface Field {
  name: string;
  type: string;
  unit?: string;
  constraints?: { required?: boolean; minimum?: number; maximum?: number; enum?: string[] };
}
interface Resource {
  name: string;
  path: string;
  bytes: number;
  hash: string;
  dialect: { delimiter: string };
  schema: {
    fields: Field[];
    primaryKey?: string[];
    foreignKeys?: { fields: string[]; reference: { resource: string; fields: string[] } }[];
  };
}
const resourcesOf = (descriptor: unknown): Resource[] => (descriptor as { resources: Resource[] }).resources;

/** The profile, without the one property whose profile type disagrees with the specification. */
function profile(): AnySchemaObject {
  return JSON.parse(
    JSON.stringify(standardJson('datapackage-2.0/datapackage.json')),
    (key, value: unknown) => (key === 'fieldsMatch' ? undefined : value),
  ) as AnySchemaObject;
}

function problems(descriptor: unknown): unknown {
  const ajv = new Ajv({ strict: false, allErrors: true, formats: { textarea: true } });
  formats.default(ajv);
  const valid = ajv.compile(profile());
  return valid(descriptor) ? [] : valid.errors;
}

const checks: Record<string, RegExp> = {
  integer: /^-?\d+$/,
  number: /^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i,
  date: /^\d{4}-\d{2}-\d{2}$/,
  string: /^/,
};

/** Reads a table as its schema says, cell by cell, and returns its rows. */
function readAsDescribed(resource: Resource, file: PublishedFile): Record<string, string>[] {
  const { delimiter } = resource.dialect;
  const options = { header: true, delimiter, skipEmptyLines: 'greedy' as const };
  const { data, meta, errors } = Papa.parse<Record<string, string>>(
    text(file).replace(/^\uFEFF/, ''),
    options,
  );
  expect(errors).toEqual([]);
  expect(meta.fields).toEqual(resource.schema.fields.map((field) => field.name));
  for (const row of data) {
    for (const { name, type, constraints = {} } of resource.schema.fields) {
      const cell = row[name] ?? '';
      if (cell === '') {
        expect(constraints.required ?? false, `${resource.name}: ${name} is empty`).toBe(false);
        continue;
      }
      expect(cell).toMatch(checks[type]!);
      if (constraints.minimum !== undefined) expect(Number(cell)).toBeGreaterThanOrEqual(constraints.minimum);
      if (constraints.enum) expect(constraints.enum).toContain(cell);
    }
  }
  return data;
}

const keys = (rows: Record<string, string>[], fields: readonly string[]): string[] =>
  rows.map((row) => JSON.stringify(fields.map((field) => row[field])));

describe.each(datasets)('datapackage.json of %s', (_name, item, of) => {
  const descriptor = publishedJson('datapackage.json', item, of);
  const files = new Map(publishedFiles(item, of).map((file) => [file.name, file]));

  test.skipIf(!standardsAreHere)('is Data Package 2.0 (needs ../shared/standards/datapackage-2.0)', () => {
    expect(problems(descriptor)).toEqual([]);
  });

  test('holds every CSV file, with its size and checksum', () => {
    const tables = [...files.keys()].filter((name) => name.endsWith('.csv'));
    expect(
      resourcesOf(descriptor)
        .map((each) => each.path)
        .sort(),
    ).toEqual(tables.sort());
    for (const { path, bytes, hash } of resourcesOf(descriptor)) {
      const file = files.get(path)!;
      expect([bytes, hash]).toEqual([file.bytes.length, `sha256:${sha256(file.bytes)}`]);
    }
  });

  test('describes every cell of every table: types, constraints, keys', () => {
    const rows = new Map(
      resourcesOf(descriptor).map((each) => [each.name, readAsDescribed(each, files.get(each.path)!)]),
    );
    for (const { name, schema } of resourcesOf(descriptor)) {
      const own = rows.get(name)!;
      if (schema.primaryKey) {
        const found = keys(own, schema.primaryKey);
        expect(new Set(found).size, `${name}: rows share a key`).toBe(own.length);
        expect(found.join()).not.toContain('""');
      }
      for (const { fields, reference } of schema.foreignKeys ?? []) {
        const there = new Set(keys(rows.get(reference.resource)!, reference.fields));
        for (const key of keys(own, fields)) expect(there.has(key)).toBe(true);
      }
    }
  });
});

describe('datapackage.json', () => {
  test('says units: g in weights.csv, the grower’s own in harvest.csv', () => {
    const units = resourcesOf(publishedJson('datapackage.json', full, library)).map(({ name, schema }) => [
      name,
      schema.fields.find((field) => field.name === 'fresh_weight')?.unit,
    ]);
    expect(Object.fromEntries(units)).toMatchObject({ weights: 'g', harvest: '[oz_av]' });
  });

  test('follows the grower’s own column names, units, delimiter and decimal comma', () => {
    const trial = {
      ...full.trial,
      metadata: {
        ...full.trial.metadata,
        harvest: {
          columns: { fresh_weight: { column: 'Wt', unit: 'kg' } },
          delimiter: ';' as const,
          decimal: ',' as const,
        },
      },
      files: new Map([
        ['harvest.csv', new TextEncoder().encode('container;row;column;Wt;"odd ""one"""\nT1;1;1;0,12;x\n')],
      ]),
    };
    const item = { ...full, trial };
    const harvest = resourcesOf(publishedJson('datapackage.json', item, library)).find(
      (each) => each.name === 'harvest',
    );
    expect(harvest?.dialect).toMatchObject({ delimiter: ';' });
    expect(harvest?.schema.fields.slice(3)).toMatchObject([
      { name: 'Wt', type: 'number', unit: 'kg', decimalChar: ',' },
      { name: 'odd "one"', type: 'string' },
    ]);
  });
});

describe.each([
  ['a site that says everything', library],
  ['a site that says no more than it must', bareLibrary],
])('data/datapackage.json of %s', (_name, of) => {
  test.skipIf(!standardsAreHere)('is Data Package 2.0 (needs ../shared/standards/datapackage-2.0)', () => {
    expect(problems(JSON.parse(acrossTrials('data/datapackage.json', of)))).toEqual([]);
  });

  test('describes every cell of all-weights.csv, and names the package of each trial as a source', () => {
    const descriptor: unknown = JSON.parse(acrossTrials('data/datapackage.json', of));
    const [all] = resourcesOf(descriptor);
    readAsDescribed(
      all!,
      siteFiles(of).find((file) => file.name === 'data/all-weights.csv')!,
    );
    const { sources } = descriptor as { sources: { path: string }[] };
    const finished = of.trials.filter((item) => item.findings !== null);
    expect(sources).toHaveLength(finished.length);
    for (const [index, { trial }] of finished.entries()) {
      expect(sources[index]?.path.endsWith(`/data/${trial.id}/datapackage.json`)).toBe(true);
    }
  });
});
