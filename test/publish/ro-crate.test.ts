import { describe, expect, test } from 'vitest';
import { publishedFiles } from '../../src/publish/files.ts';
import { sha256 } from '../../src/publish/sha256.ts';
import { expanded } from './linked-data.ts';
import { datasets, publishedJson } from './published.ts';
import { standardsAreHere } from './standards.ts';

type Entity = Record<string, unknown> & { '@id': string; '@type': string };
const graphOf = (crate: unknown): Entity[] => (crate as { '@graph': Entity[] })['@graph'];

/** Every `{"@id": ...}` that refers to another entity. */
function references(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(references);
  if (typeof value !== 'object' || value === null) return [];
  const keys = Object.keys(value);
  if (keys.length === 1 && keys[0] === '@id') return [(value as Entity)['@id']];
  return Object.values(value).flatMap(references);
}

describe.each(datasets)('ro-crate-metadata.json of %s', (_name, item, of) => {
  const crate = publishedJson('ro-crate-metadata.json', item, of);
  const graph = graphOf(crate);
  const byId = new Map(graph.map((entity) => [entity['@id'], entity]));

  test.skipIf(!standardsAreHere)(
    'uses terms that the RO-Crate 1.2 context defines (needs ../shared/standards/rocrate)',
    async () => {
      expect((await expanded(crate)).length).toBe(graph.length);
    },
  );

  test('describes itself and its root as RO-Crate 1.2 demands', () => {
    expect(byId.get('ro-crate-metadata.json')).toEqual({
      '@id': 'ro-crate-metadata.json',
      '@type': 'CreativeWork',
      conformsTo: { '@id': 'https://w3id.org/ro/crate/1.2' },
      about: { '@id': './' },
    });
    const root = byId.get('./');
    expect(root?.['@type']).toBe('Dataset');
    for (const property of ['name', 'description', 'datePublished', 'license'])
      expect(root).toHaveProperty(property);
    expect(root?.['datePublished']).toMatch(/^\d{4}-\d{2}-\d{2}$/);
  });

  test('is flat: each entity stands once, has a type, and whatever is referred to is there', () => {
    expect(byId.size).toBe(graph.length);
    for (const entity of graph) {
      expect(entity['@type']).toBeTruthy();
      for (const id of references(Object.values(entity))) {
        if (id !== 'https://w3id.org/ro/crate/1.2')
          expect(byId.has(id), `${entity['@id']} refers to ${id}`).toBe(true);
      }
    }
  });

  test('holds every file of the folder but itself, with size and checksum where it was written before', () => {
    const loose = publishedFiles(item, of).filter(
      (file) => !file.name.endsWith('.zip') && file.name !== 'ro-crate-metadata.json',
    );
    const files = graph.filter((entity) => entity['@type'] === 'File');
    expect(files.map((entity) => decodeURIComponent(entity['@id']))).toEqual(loose.map((file) => file.name));
    for (const [index, file] of loose.entries()) {
      if (file.name === 'SHA256SUMS') continue;
      expect(files[index]).toMatchObject({
        contentSize: String(file.bytes.length),
        sha256: sha256(file.bytes),
      });
    }
  });
});
