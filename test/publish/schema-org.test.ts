import SHACLValidator from 'rdf-validate-shacl';
import { describe, expect, test } from 'vitest';
import { datasetJsonLd, jsonForScript, publishedFiles } from '../../src/publish/files.ts';
import { full, library } from './example.ts';
import { terms, triples, turtle } from './linked-data.ts';
import { datasets } from './published.ts';
import { standardJson, standardsAreHere, standardText } from './standards.ts';

/** Every term of schema.org, from its own context. */
function vocabulary(): Set<string> {
  const context = (standardJson('schemaorg/context-30.0.jsonld') as { '@context': Record<string, unknown> })[
    '@context'
  ];
  return new Set(Object.keys(context));
}

describe.skipIf(!standardsAreHere)('datasetJsonLd (needs ../shared/standards/schemaorg)', () => {
  test.each(datasets)('passes the required and the common shapes: %s', async (_name, item, of) => {
    const data = await triples(datasetJsonLd(item, of));
    for (const shapes of ['googleRequired.ttl', 'soso_common_v1.2.3.ttl']) {
      const report = new SHACLValidator(turtle(standardText(`schemaorg/${shapes}`))).validate(data);
      const results = (await report).results.map((each) => each.message.map((message) => message.value));
      expect(results, shapes).toEqual([]);
    }
  });

  test('would not pass without a description or a version', async () => {
    const rest = { ...datasetJsonLd(full, library), description: undefined, version: undefined };
    const shapes = turtle(standardText('schemaorg/soso_common_v1.2.3.ttl'));
    const report = await new SHACLValidator(shapes).validate(await triples(rest));
    expect(report.results.map((each) => each.path?.value).sort()).toEqual([
      'http://schema.org/description',
      'http://schema.org/version',
    ]);
  });

  test.each(datasets)('misspells no term: %s', async (_name, item, of) => {
    const known = vocabulary();
    for (const term of terms(await triples(datasetJsonLd(item, of)))) {
      if (!term.startsWith('http://schema.org/')) continue;
      expect(known.has(term.replace('http://schema.org/', '')), term).toBe(true);
    }
  });
});

describe('datasetJsonLd', () => {
  test('names unit, trait, taxon, place and time', () => {
    expect(datasetJsonLd(full, library)).toMatchObject({
      temporalCoverage: '2025-08-25/2025-11-10',
      spatialCoverage: { geo: { latitude: 52.9, longitude: -9.1 } },
      about: { '@type': 'Taxon', '@id': 'http://purl.obolibrary.org/obo/NCBITaxon_4236' },
      variableMeasured: [
        { unitText: 'g', unitCode: 'GRM', propertyID: 'http://purl.obolibrary.org/obo/TO_0000442' },
        { name: 'Leaves' },
        { unitText: 'cm' },
      ],
    });
  });
  test('lists every file with its size', () => {
    const { distribution } = datasetJsonLd(full, library) as {
      distribution: { name: string; contentSize: string }[];
    };
    expect(distribution.map(({ name, contentSize }) => [name, contentSize])).toEqual(
      publishedFiles(full, library).map((file) => [file.name, `${String(file.bytes.length)} B`]),
    );
  });
  test('in a script element cannot end it', () => {
    expect(jsonForScript({ name: '</script><!--' })).not.toContain('<');
    expect(JSON.parse(jsonForScript({ name: '</script><!--' }))).toEqual({ name: '</script><!--' });
  });
});
