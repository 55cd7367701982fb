import { describe, expect, test } from 'vitest';
import { fieldsOf, tableSources, type TableName } from '../../src/publish/table-schema.ts';
import { weightsTable } from '../../src/publish/weights-table.ts';
import { bare, full } from './example.ts';
import { standardJson, standardsAreHere } from './standards.ts';
import { Ajv } from 'ajv';
import formats from 'ajv-formats';

const names = Object.keys(tableSources) as TableName[];

describe('the table schemas', () => {
  test.each(names)(
    '%s describes every column, with a title and an example where one can be given',
    (name) => {
      for (const field of tableSources[name].fields) {
        expect(field.description.length, field.name).toBeGreaterThan(8);
        expect(field.title, field.name).toBeTruthy();
      }
    },
  );

  test.each(names)('%s names as needed and as key only columns that it has', (name) => {
    const { fields, needed, primaryKey } = tableSources[name];
    const known = fields.map((field) => field.name);
    expect(known).toEqual(expect.arrayContaining([...needed, ...primaryKey]));
    expect(new Set(known).size).toBe(known.length);
  });

  test.skipIf(!standardsAreHere).each(names)(
    '%s is Table Schema 2.0 (needs ../shared/standards/datapackage-2.0)',
    (name) => {
      const ajv = new Ajv({ strict: false, allErrors: true, formats: { textarea: true } });
      formats.default(ajv);
      const profile = JSON.parse(
        JSON.stringify(standardJson('datapackage-2.0/tableschema.json')),
        (key, value: unknown) => (key === 'fieldsMatch' ? undefined : value),
      ) as object;
      const valid = ajv.compile(profile);
      expect(valid(tableSources[name]), JSON.stringify(valid.errors)).toBe(true);
    },
  );
});

describe('fieldsOf', () => {
  test.each([full, bare])('gives weights.csv the columns that it has, in order', (item) => {
    expect(fieldsOf('weights', item.trial.metadata).map((field) => field.name)).toEqual(
      weightsTable(item.trial).columns,
    );
  });
  test('gives each factor its levels and each variable its unit and trait', () => {
    const fields = new Map(fieldsOf('weights', full.trial.metadata).map((field) => [field.name, field]));
    expect(fields.get('strength')).toMatchObject({
      title: 'Solution strength',
      constraints: { enum: ['0.5', '1'] },
    });
    expect(fields.get('cultivar')?.constraints?.enum).toEqual(['cobalt-wren', "'=2"]);
    expect(fields.get('fresh_weight')).toMatchObject({
      unit: 'g',
      rdfType: 'http://purl.obolibrary.org/obo/TO_0000442',
    });
    expect(fields.get('leaves')).not.toHaveProperty('unit');
  });
});
