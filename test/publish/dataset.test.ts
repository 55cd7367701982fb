import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dataset, finished } from '../../src/publish/dataset.ts';
import { licence } from '../../src/publish/licence.ts';
import { personName, sortedName } from '../../src/publish/person-name.ts';
import { yamlText } from '../../src/publish/yaml-text.ts';
import { parse } from 'yaml';
import { bare, bareLibrary, full, growing, library } from './example.ts';

describe('dataset', () => {
  test('is described by the summary, or built from question, crop, season and site', () => {
    expect(dataset(full, library).description).toBe(full.trial.metadata.summary);
    expect(dataset(bare, bareLibrary).description).toBe(
      'How much a pot? A growing trial of Basil in summer 2024 at Yard (open air). Unreplicated, treatments allotted to each container, no lots drawn, 1 container.',
    );
  });
  test('is cited by its growers and authors once each; the others contributed', () => {
    const set = dataset(full, library);
    expect(set.creators.map(({ name, parts }) => [name.full, parts])).toEqual([
      ['Orla van der Fennimoor', ['grower', 'author']],
    ]);
    expect(set.contributors.map(({ name }) => name.full)).toEqual(['Tam Brackwell', 'Ysolde']);
    expect(dataset(bare, library).creators.map(({ name }) => name.full)).toEqual(['Tam Brackwell']);
  });
  test('has its own DOI only where the trial says so', () => {
    expect(dataset(full, library).doi).toBe('10.5555/12345678');
    const other = {
      ...full.trial,
      metadata: { ...full.trial.metadata, related: [{ kind: 'doi' as const, value: '10.5555/87654321' }] },
    };
    expect(dataset({ ...full, trial: other }, library)).toMatchObject({
      doi: null,
      identifier: 'https://fernhollow.example.org/trials/data/every-field-2025/',
    });
  });
  test('is released on the day that its version names', () => {
    expect(dataset(full, library)).toMatchObject({ created: '2025-11-12', released: '2025-12-01' });
  });
  test('is there only for a finished trial', () => {
    expect(finished(full)).not.toBeNull();
    expect(finished(growing)).toBeNull();
    expect(finished({ ...growing, findings: full.findings })).toBeNull();
  });
});

describe('licence', () => {
  test.each([
    [
      'CC-BY-4.0',
      'https://creativecommons.org/licenses/by/4.0/',
      'You may use, change and share these data if you name where they come from.',
    ],
    [
      'CC-BY-NC-SA-4.0',
      'https://creativecommons.org/licenses/by-nc-sa/4.0/',
      'You may use, change and share these data if you name where they come from, do not sell them or use them to make money and share what you make of them under the same licence.',
    ],
    [
      'CC-BY-ND-4.0',
      'https://creativecommons.org/licenses/by-nd/4.0/',
      'You may use and share these data if you name where they come from and pass them on unchanged only.',
    ],
    [
      'CC0-1.0',
      'https://creativecommons.org/publicdomain/zero/1.0/',
      'You may do anything with these data without asking; a citation is a courtesy.',
    ],
    ['MIT', 'https://spdx.org/licenses/MIT.html', null],
  ])('%s', (id, address, allows) => expect(licence(id)).toMatchObject({ id, address, allows }));
});

describe('personName', () => {
  test.each([
    ['Imke Farrant', 'Farrant, Imke', 'Imke Farrant'],
    ['Ada van der Berg', 'van der Berg, Ada', 'Ada van der Berg'],
    ['García Márquez, Ana', 'García Márquez, Ana', 'Ana García Márquez'],
    ['Ysolde', 'Ysolde', 'Ysolde'],
    ['  Mei   Lin ', 'Lin, Mei', 'Mei Lin'],
  ])('%s is sorted as %s', (written, sorted, whole) => {
    expect(sortedName(personName(written))).toBe(sorted);
    expect(personName(written).full).toBe(whole);
  });
});

describe('yamlText', () => {
  test('reads back as what was written, strings as strings', () => {
    const value = {
      day: '2025-12-01',
      no: 'no',
      list: [{ a: 'x: "y"', b: 'line\nbreak\u2028\u0085' }, { a: '- z' }],
      words: ['1', '# no comment'],
    };
    expect(parse(yamlText(value))).toEqual(value);
  });

  test('reads back whatever the text', () => {
    const any = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({
        unit: fc.constantFrom('\n', '\t', '\u0085', '\u2028', '\ufeff', "'", '"', '#', ':', ' ', '\\'),
      }),
    );
    fc.assert(
      fc.property(any, any, (a, b) => {
        const value = { a, list: [b, a], deep: [{ a: b, b: a }] };
        return JSON.stringify(parse(yamlText(value))) === JSON.stringify(value);
      }),
    );
  });
});
