import { Ajv } from 'ajv';
import formats from 'ajv-formats';
import { describe, expect, test } from 'vitest';
import identifiers from 'spdx-license-ids/index.json' with { type: 'json' };
import { parse } from 'yaml';
import { citationSentence } from '../../src/publish/files.ts';
import { licence } from '../../src/publish/licence.ts';
import { dataset } from '../../src/publish/dataset.ts';
import { bare, full, library } from './example.ts';
import { datasets, published, publishedJson } from './published.ts';
import { standardJson, standardsAreHere } from './standards.ts';

const doi = '10.5555/12345678';

describe('the citation sentence', () => {
  test('names people, year, title, version, publisher and the DOI', () => {
    expect(citationSentence(full, library)).toBe(
      `Orla van der Fennimoor (2025). ${full.trial.metadata.title} (version 1.2.0) [Data set]. Fernhollow garden. https://doi.org/${doi}`,
    );
  });
  test('ends a publisher that is abbreviated with one full stop', () => {
    const site = { ...library.site, publisher: 'Fernhollow & Co.' };
    expect(citationSentence(full, { ...library, site })).toContain('. Fernhollow & Co. https://');
  });
  test('gives the data page where the trial has no DOI', () => {
    expect(citationSentence(bare, library)).toBe(
      'Tam Brackwell (2024). One tray (version 1.0.0) [Data set]. Fernhollow garden. https://fernhollow.example.org/trials/data/no-option-2024/',
    );
  });
});

describe.each(datasets)('the citations of %s', (_name, item, of) => {
  test.skipIf(!standardsAreHere)(
    'CITATION.cff is Citation File Format 1.2.0 (needs ../shared/standards/cff)',
    () => {
      const ajv = new Ajv({ strict: false, allErrors: true });
      formats.default(ajv);
      const valid = ajv.compile(standardJson('cff/cff-1.2.0.schema.json') as object);
      const cff: unknown = parse(published('CITATION.cff', item, of));
      expect(valid(cff), JSON.stringify(valid.errors)).toBe(true);
    },
  );

  test.skipIf(!standardsAreHere)('csl.json is CSL-JSON (needs ../shared/standards/csl)', () => {
    const ajv = new Ajv({ strict: false, allErrors: true });
    const valid = ajv.compile(standardJson('csl/csl-data.json') as object);
    expect(valid(publishedJson('csl.json', item, of)), JSON.stringify(valid.errors)).toBe(true);
  });

  test('all say the same title, version, day and identifier', () => {
    const set = dataset(item, of);
    const cff = parse(published('CITATION.cff', item, of)) as Record<string, unknown>;
    expect(cff).toMatchObject({ title: set.title, version: set.version, 'date-released': set.released });
    expect(cff['doi']).toBe(set.doi ?? undefined);
    const [csl] = publishedJson('csl.json', item, of) as Record<string, unknown>[];
    expect(csl).toMatchObject({ title: set.title, version: set.version, URL: set.dataPage });
    expect(csl?.['DOI']).toBe(set.doi ?? undefined);
    const ris = published('citation.ris', item, of);
    expect(ris).toContain(`\r\nTI  - ${set.title}\r\n`);
    expect(ris).toContain(`\r\nUR  - ${set.dataPage}\r\n`);
    expect(published('citation.bib', item, of)).toContain(`date = {${set.released}}`);
  });

  test('citation.ris opens with its type, ends with ER, and has one tag a line', () => {
    const lines = published('citation.ris', item, of).split('\r\n');
    expect(lines[0]).toBe('TY  - DATA');
    expect(lines.slice(-2)).toEqual(['ER  - ', '']);
    for (const line of lines.slice(0, -1)) expect(line).toMatch(/^[A-Z][A-Z0-9] {2}- [^\n\r\t]*$/);
  });

  test('citation.bib is one entry whose braces match and whose text holds no bare command', () => {
    const bib = published('citation.bib', item, of);
    expect(bib).toMatch(/^@dataset\{[a-z0-9-]+,\n/);
    let depth = 0;
    for (const [mark] of bib.matchAll(/\\.|[{}]/g)) {
      if (mark === '{') depth += 1;
      if (mark === '}') depth -= 1;
      expect(depth).toBeGreaterThanOrEqual(0);
    }
    expect(depth).toBe(0);
    const prose = bib.split('\n').filter((line) => !/^ {2}(?:url|doi) /.test(line));
    expect(prose.join('\n')).not.toMatch(/(?<!\\)[%&#$_~^]/);
  });
});

describe('citation.bib', () => {
  test('escapes what TeX would run', () => {
    expect(published('citation.bib', full, library)).toContain(
      'title = {{Every field: "quoted" \\& <marked> \\{braced\\} 100\\% of café\\_leaves \\#1}}',
    );
  });
});

describe.skipIf(!standardsAreHere)('the licence in CITATION.cff (needs ../shared/standards/cff)', () => {
  const schema = standardsAreHere
    ? (standardJson('cff/cff-1.2.0.schema.json') as { definitions: Record<string, { enum?: string[] }> })
    : null;
  const listed = new Set(schema?.definitions['license-enum']?.enum);
  test('is on the list of the format wherever it is given by its identifier', () => {
    const known = identifiers.filter((id) => licence(id).allows !== null);
    expect(known).toContain('CC-BY-4.0');
    expect(known.filter((id) => !listed.has(id))).toEqual([]);
  });
  test('is named by its address otherwise', () => {
    const trial = { ...bare.trial, metadata: { ...bare.trial.metadata, licence: 'MIT-0' } };
    const cff = parse(published('CITATION.cff', { ...bare, trial }, library)) as Record<string, unknown>;
    expect(cff).toMatchObject({ 'license-url': 'https://spdx.org/licenses/MIT-0.html' });
    expect(cff).not.toHaveProperty('license');
  });
});

describe('a DOI', () => {
  const names = [
    'CITATION.cff',
    'citation.bib',
    'citation.ris',
    'csl.json',
    'datacite.json',
    'datapackage.json',
    'README.txt',
    'ro-crate-metadata.json',
    'miappe.json',
  ];
  test.each(names)('of the dataset itself stands in %s', (name) => {
    expect(published(name, full, library)).toContain(doi);
  });
  test.each(names)('is never invented: %s of a trial without one has none', (name) => {
    expect(published(name, bare, library)).not.toMatch(/\b10\.\d{4,}\//);
  });
});
