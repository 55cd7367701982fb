import { describe, expect, test } from 'vitest';
import { publishedFiles } from '../../src/publish/files.ts';
import { bareLibrary, full, library, withGathered } from './example.ts';
import { terms, triples } from './linked-data.ts';
import { acrossTrials } from './published.ts';
import { standardJson, standardsAreHere } from './standards.ts';

const dcat = 'http://www.w3.org/ns/dcat#';

describe.each([
  ['a site that says everything', library],
  ['a site that says no more than it must', bareLibrary],
  ['a site without trials', { ...library, trials: [] }],
  ['a site with trials of another', withGathered],
])('data/catalog.jsonld of %s', (_name, of) => {
  const catalog = JSON.parse(acrossTrials('data/catalog.jsonld', of)) as {
    'dcat:dataset': { 'dcat:distribution': object[] }[];
  };

  test.skipIf(!standardsAreHere)('uses terms that DCAT 3 has (needs ../shared/standards/dcat)', async () => {
    const { '@graph': graph } = standardJson('dcat/dcat3.jsonld') as { '@graph': { '@id': string }[] };
    const known = new Set(graph.map((node) => node['@id']));
    const used = terms(await triples(catalog)).filter((term) => term.startsWith(dcat));
    expect(used).toContain(`${dcat}Catalog`);
    for (const term of used) expect(known.has(term.replace(dcat, 'dcat:')), term).toBe(true);
  });

  test('lists every dataset with its tables and archives', () => {
    const finished = of.trials.filter((item) => item.findings !== null);
    expect(catalog['dcat:dataset']).toHaveLength(finished.length);
    for (const [index, item] of finished.entries()) {
      expect(catalog['dcat:dataset'][index]?.['dcat:distribution']).toHaveLength(
        publishedFiles(item, of).filter((file) => /\.(?:csv|zip)$/.test(file.name)).length,
      );
    }
  });
});

test('the catalogue gives a place no finer than the trial does', () => {
  const catalog = JSON.parse(acrossTrials('data/catalog.jsonld', library)) as {
    'dcat:dataset': Record<string, unknown>[];
  };
  expect(catalog['dcat:dataset'][0]?.['dcterms:spatial']).toMatchObject({
    'dcat:centroid': { '@value': 'POINT(-9.1 52.9)' },
  });
  expect(catalog['dcat:dataset'][1]?.['dcterms:spatial']).not.toHaveProperty('dcat:centroid');
  expect(full.trial.metadata.site).toMatchObject({ latitude: 52.9, longitude: -9.1 });
});

test('the catalogue lists datasets of other sites under their own catalogue, and no file of them', () => {
  const catalog = JSON.parse(acrossTrials('data/catalog.jsonld', withGathered)) as Record<string, object[]>;
  expect(catalog['dcat:catalog']).toMatchObject([
    {
      '@id': 'https://otterbrook.example.org/data/catalog.jsonld',
      'dcat:dataset': [
        {
          '@id': 'https://otterbrook.example.org/data/no-option-2024/',
          'dcterms:creator': [{ 'foaf:name': 'Tam Brackwell' }],
          'dcat:landingPage': { '@id': 'https://otterbrook.example.org/trials/no-option-2024/' },
        },
      ],
    },
  ]);
  expect(JSON.stringify(catalog['dcat:catalog'])).not.toContain('dcat:distribution');
});
