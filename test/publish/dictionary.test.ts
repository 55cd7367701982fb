import { expect, test } from 'vitest';
import trialSchema from '../../schemas/trial.schema.json' with { type: 'json' };
import { dictionary } from '../../src/publish/dictionary.ts';
import { fieldsOfSchema } from '../../src/publish/dictionary-of-schema.ts';
import { weightsTable } from '../../src/publish/weights-table.ts';
import { trialOf } from '../support/trial-of.ts';

test('every field of every file has a meaning, and no name stands twice in a file', () => {
  for (const { file, fields } of dictionary()) {
    const names = fields.map(({ name }) => name);
    expect(new Set(names).size, file).toBe(names.length);
    for (const { name, meaning, kind } of fields) {
      expect(meaning, `${file} ${name}`).not.toBe('');
      expect(kind, `${file} ${name}`).not.toBe('');
    }
  }
});

test('every key of trial.yaml has its entry, the inner ones by their path', () => {
  const trial = dictionary().find(({ file }) => file.startsWith('trial.json'))!;
  const names = trial.fields.map(({ name }) => name);
  expect(names).toEqual(expect.arrayContaining(Object.keys(trialSchema.properties)));
  expect(names).toEqual(
    expect.arrayContaining(['crop.species', 'people[].orcid', 'containers[].cover.length']),
  );
});

test('every column of weights.csv is in its dictionary', () => {
  const trial = trialOf([{ container: 'T1', treatment: { cultivar: 'a' }, weight: 100 }]);
  const own = new Set([
    ...trial.metadata.variables.map(({ id }) => id),
    ...(trial.metadata.factors ?? []).map(({ id }) => id),
  ]);
  const fixed = weightsTable(trial).columns.filter((column) => !own.has(column));
  const names = dictionary()
    .find(({ file }) => file === 'weights.csv')!
    .fields.map(({ name }) => name);
  expect(names).toEqual(expect.arrayContaining(fixed));
});

test('a shared definition is written out once and referred to after', () => {
  const size = {
    type: 'object',
    description: 'A size.',
    properties: { length: { type: 'number', description: 'Long.' } },
  };
  const fields = fieldsOfSchema({
    type: 'object',
    properties: { cover: { $ref: '#/$defs/size' }, inside: { $ref: '#/$defs/size', description: 'Inner.' } },
    required: ['cover'],
    $defs: { size },
  });
  expect(fields.map(({ name, kind, needed, meaning }) => [name, kind, needed, meaning])).toEqual([
    ['cover', 'group', true, 'A size.'],
    ['cover.length', 'number', false, 'Long.'],
    ['inside', 'group, with the keys of cover', false, 'Inner.'],
  ]);
});
