import { Ajv2020 } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import indexSchema from '../../schemas/index.schema.json' with { type: 'json' };
import { publishedFiles, siteFiles } from '../../src/publish/files.ts';
import { allWeightsTable } from '../../src/publish/all-weights-table.ts';
import { publishedMetadata } from '../../src/model/published-metadata.ts';
import { sha256 } from '../../src/publish/sha256.ts';
import type { Trial } from '../../src/model/trial.ts';
import { bare, bareLibrary, full, growing, library, text, withGathered } from './example.ts';

const named = (name: string, of = library): string => text(siteFiles(of).find((file) => file.name === name));

describe('index.json', () => {
  test.each([
    ['a site that says everything', library],
    ['a site that says no more than it must', bareLibrary],
    ['a site without trials', { ...library, trials: [] }],
    ['a site with trials of another', withGathered],
  ])('is what its published schema describes: %s', (_name, of) => {
    const ajv = new Ajv2020({ allErrors: true });
    formats.default(ajv);
    const valid = ajv.compile(indexSchema);
    expect(valid(JSON.parse(named('data/index.json', of))), JSON.stringify(valid.errors)).toBe(true);
    expect(JSON.parse(named('data/index.schema.json', of))).toEqual(indexSchema);
  });

  test('lists every dataset, and no growing trial, with addresses that lead to its files', () => {
    const index = JSON.parse(named('data/index.json')) as {
      datasets: { id: string; files: { address: string; sha256: string; bytes: number }[] }[];
    };
    expect(index.datasets.map((dataset) => dataset.id)).toEqual(['every-field-2025', 'no-option-2024']);
    const files = publishedFiles(full, library);
    expect(index.datasets[0]?.files.map((file) => [file.address, file.bytes, file.sha256])).toEqual(
      files.map((file) => [`every-field-2025/${file.name}`, file.bytes.length, sha256(file.bytes)]),
    );
  });
});

describe('all-weights.csv', () => {
  const rows = Papa.parse<Record<string, string>>(named('data/all-weights.csv'), {
    header: true,
    skipEmptyLines: true,
  });

  test('holds the rows of every trial under the union of their columns', () => {
    expect(rows.errors).toEqual([]);
    expect(rows.meta.fields?.join(',')).toBe(
      'trial,container,row,column,plot,block,cultivar,strength,cut,plant,fresh_weight,height,leaves,status,pot_total,remark',
    );
    expect(rows.data.map((row) => row['trial'])).toEqual([
      ...full.trial.harvest.map(() => 'every-field-2025'),
      ...bare.trial.harvest.map(() => 'no-option-2024'),
    ]);
    expect(rows.data.slice(-3).map((row) => [row['fresh_weight'], row['cultivar'], row['height']])).toEqual([
      ['120', '', ''],
      ['135', '', ''],
      [String(0.1 + 0.2), '', ''],
    ]);
  });

  test('never mixes two units, nor a factor and a variable, in one column', () => {
    const measured = bare.trial.metadata.variables[0]!;
    const other: Trial = {
      ...bare.trial,
      id: 'other-units',
      metadata: {
        ...bare.trial.metadata,
        variables: [
          measured,
          { ...measured, id: 'height', unit: '[in_i]' },
          { ...measured, id: 'strength', unit: 'N' },
        ],
      },
      harvest: bare.trial.harvest.map((record) => ({
        ...record,
        values: { fresh_weight: 1, height: 5, strength: 7 },
      })),
    };
    const table = allWeightsTable([full.trial, other]);
    expect(table.columns.slice(6, -3)).toEqual([
      'cultivar',
      'strength',
      'cut',
      'plant',
      'fresh_weight',
      'height [[in_i]]',
      'height [cm]',
      'leaves',
      'strength [N]',
    ]);
    const last = new Map(table.columns.map((column, index) => [column, table.rows.at(-1)?.[index]]));
    expect(
      ['height [[in_i]]', 'height [cm]', 'strength', 'strength [N]'].map((column) => last.get(column)),
    ).toEqual([5, null, null, 7]);
  });
});

describe('publishedFiles', () => {
  test('gives a growing trial no dataset', () => {
    expect(publishedFiles(growing, library)).toEqual([]);
  });
  test('gives the grower’s own files byte for byte', () => {
    for (const name of ['harvest.csv', 'layout.csv', 'readings.csv']) {
      const file = publishedFiles(full, library).find((each) => each.name === name);
      expect(file?.bytes).toEqual(full.trial.files.get(name));
    }
  });
  test('gives trial.yaml as JSON with the id', () => {
    const file = publishedFiles(full, library).find((each) => each.name === 'trial.json');
    expect(JSON.parse(text(file))).toEqual({
      id: 'every-field-2025',
      ...publishedMetadata(full.trial.metadata),
    });
  });
});
