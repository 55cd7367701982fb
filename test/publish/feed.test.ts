import { RelaxNGValidator, XmlDocument } from 'libxml2-wasm';
import { describe, expect, test } from 'vitest';
import { cropsOf, cultivarsOf } from '../../src/publish/crop-comparisons.ts';
import { xmlText } from '../../src/publish/xml-text.ts';
import { bareLibrary, full, library } from './example.ts';
import { acrossTrials } from './published.ts';
import { standardsAreHere, standardText } from './standards.ts';

const namespaces = {
  atom: 'http://www.w3.org/2005/Atom',
  map: 'http://www.sitemaps.org/schemas/sitemap/0.9',
};
const found = (xml: string, path: string): string[] => {
  const document = XmlDocument.fromString(xml);
  const nodes = document.find(path, namespaces).map((node) => node.content);
  document.dispose();
  return nodes;
};

describe.each([
  ['a site that says everything', library],
  ['a site that says no more than it must', bareLibrary],
  ['a site without trials', { ...library, trials: [] }],
])('feed.xml of %s', (_name, of) => {
  const xml = acrossTrials('feed.xml', of);

  test.skipIf(!standardsAreHere)(
    'is Atom by the grammar of RFC 4287 (needs ../shared/standards/atom)',
    () => {
      const grammar = XmlDocument.fromString(standardText('atom/atom-rfc4287.rng'));
      const validator = RelaxNGValidator.fromDoc(grammar);
      const document = XmlDocument.fromString(xml);
      expect(() => {
        validator.validate(document);
      }).not.toThrow();
      for (const disposable of [document, validator, grammar]) disposable.dispose();
    },
  );

  test('has what the grammar cannot ask for: an author, a self link, full times, distinct ids', () => {
    expect(found(xml, '/atom:feed/atom:author')).toHaveLength(1);
    expect(found(xml, '/atom:feed/atom:link[@rel="self"]/@href')).toHaveLength(1);
    for (const time of found(xml, '//atom:updated'))
      expect(time).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/);
    const ids = found(xml, '//atom:id');
    expect(new Set(ids).size).toBe(ids.length);
    expect(found(xml, '//atom:entry[not(atom:link[@rel="alternate"])]')).toEqual([]);
  });
});

describe('feed.xml', () => {
  test('has every release, the newest first, with its text whole', () => {
    const xml = acrossTrials('feed.xml', library);
    expect(found(xml, '//atom:entry/atom:updated')).toEqual(
      ['2025-12-01', '2025-11-12', '2024-07-02'].map((day) => `${day}T00:00:00Z`),
    );
    expect(found(xml, '//atom:entry/atom:title')[0]).toBe(`${full.trial.metadata.title}, version 1.2.0`);
  });
});

describe('xmlText', () => {
  test('escapes marks and leaves out what XML cannot hold', () => {
    expect(xmlText('a<b & "c"\u0001\ud800')).toBe('a&lt;b &amp; &quot;c&quot;\uFFFD\uFFFD');
  });
});

describe('sitemap.xml', () => {
  const addresses = found(acrossTrials('sitemap.xml', library), '//map:loc');
  test('lists the pages of finished and growing trials, and data pages of finished ones', () => {
    expect(addresses).toContain('https://fernhollow.example.org/trials/trials/still-growing/');
    expect(addresses).not.toContain('https://fernhollow.example.org/trials/data/still-growing/');
    expect(addresses).toContain('https://fernhollow.example.org/trials/data/every-field-2025/');
  });
  test('lists the page of every cultivar and crop', () => {
    const pages = addresses.map((each) => each.replace('https://fernhollow.example.org/trials/', ''));
    expect(pages).toContain('cultivars/');
    for (const { id } of cultivarsOf(library)) expect(pages).toContain(`cultivars/${id}/`);
    for (const { id } of cropsOf(library)) expect(pages).toContain(`crops/${id}/`);
    expect(cropsOf(library).length).toBeGreaterThan(0);
    expect(cultivarsOf(library).length).toBeGreaterThan(0);
  });
  test('is named by robots.txt', () => {
    expect(acrossTrials('robots.txt', library)).toContain(
      '\nSitemap: https://fernhollow.example.org/trials/sitemap.xml\n',
    );
  });
});
