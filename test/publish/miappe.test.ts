import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { toBeComplete } from '../../src/publish/files.ts';
import { bare, full, library } from './example.ts';
import { datasets, published, publishedJson } from './published.ts';
import { standardJson, standardsAreHere } from './standards.ts';

type Sections = Record<string, Record<string, string | number>[]>;
interface Section {
  section: string;
  fields: { codename: string; mandatory: boolean }[];
}

describe.skipIf(!standardsAreHere).each(datasets)(
  'miappe.json of %s (needs ../shared/standards/miappe)',
  (_name, item, of) => {
    const sections = publishedJson('miappe.json', item, of) as Sections;
    const checklist = standardsAreHere ? (standardJson('miappe/checklist-1.2.fields.json') as Section[]) : [];

    test('fills every mandatory field of each section that applies', () => {
      for (const { section, fields } of checklist) {
        for (const record of sections[section] ?? []) {
          for (const { codename } of fields.filter((field) => field.mandatory)) {
            expect(String(record[codename] ?? ''), `${section}: ${codename}`).not.toBe('');
          }
        }
      }
    });

    test('has the sections that every trial needs, and no field or section that the checklist lacks', () => {
      for (const needed of [
        'INVESTIGATION',
        'STUDY',
        'PERSON',
        'DATA FILE',
        'BIOLOGICAL MATERIAL',
        'OBSERVATION UNIT',
        'OBSERVED VARIABLE',
      ]) {
        expect(sections[needed]?.length, needed).toBeGreaterThan(0);
      }
      for (const [section, records] of Object.entries(sections)) {
        const known = checklist
          .find((each) => each.section === section)
          ?.fields.map((field) => field.codename);
        for (const record of records) expect(known).toEqual(expect.arrayContaining(Object.keys(record)));
      }
    });

    test('miappe.tsv holds the same values, one a line', () => {
      const { data, errors } = Papa.parse<Record<string, string>>(published('miappe.tsv', item, of), {
        header: true,
        delimiter: '\t',
        skipEmptyLines: true,
      });
      expect(errors).toEqual([]);
      const count = Object.values(sections)
        .flat()
        .reduce((sum, record) => sum + Object.keys(record).length, 0);
      expect(data).toHaveLength(count);
      const organism = data.find((row) => row['field'] === 'organism');
      expect(organism?.['value']).toBe(String(sections['BIOLOGICAL MATERIAL']?.[0]?.['organism']));
    });
  },
);

describe('toBeComplete', () => {
  test('names what the trial lacks, the demanded ones among them', () => {
    expect(toBeComplete(bare).map((lack) => lack.where)).toEqual([
      'site.country',
      'crop.taxon',
      'dates.sown',
      'crop.cultivar',
      'people',
      'variables.trait',
      'people.orcid',
      'related',
    ]);
    expect(toBeComplete(full).map((lack) => lack.where)).toEqual([
      'people',
      'variables.trait',
      'people.orcid',
    ]);
  });

  test('names every mandatory field that is published as not provided', () => {
    const sections = publishedJson('miappe.json', bare, library) as Sections;
    const lacking = Object.values(sections)
      .flat()
      .flatMap((record) =>
        Object.entries(record)
          .filter(([, value]) => value === 'not provided')
          .map(([field]) => field),
      );
    expect([...new Set(lacking)]).toEqual(['locationCountry', 'personAffiliation', 'organism']);
  });
});
