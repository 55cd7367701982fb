import { expect, test } from 'vitest';
import { libraryOf } from '../../src/commands/library-of.ts';
import { loadContent } from '../../src/commands/load-content.ts';
import { searchRecords } from '../../src/publish/search-records.ts';
import { sitemap } from '../../src/publish/sitemap.ts';
import { demo } from '../support/site.ts';

const library = libraryOf(await loadContent(demo));
const records = searchRecords(library);
const at = (path: string) => {
  const record = records.find((each) => each.path === path);
  if (record === undefined) throw new Error(`nothing leads to ${path}`);
  return record;
};

test('every trial, cultivar, crop and fact sheet is found once, at a page that the site has', () => {
  const paths = records.map(({ path }) => path);
  expect(new Set(paths).size).toBe(paths.length);
  const found = [...sitemap(library).matchAll(/<loc>https:\/\/[^/]+\/([^<]+)<\/loc>/g)].map(
    ([, path]) => path!,
  );
  const wanted = found.filter((path) =>
    /^(?:(?:trials|cultivars|crops|fact-sheets)\/[^/]+\/|trials\/[^/]+\/fact-sheet\/(?:[a-z]+\/)?)$/.test(
      path,
    ),
  );
  expect(paths.sort()).toEqual(wanted.sort());
});

test('a fact sheet is found by what its author wrote, paragraph by paragraph', () => {
  const sheets = records.filter(({ kind }) => kind === 'fact sheet');
  expect(sheets.length).toBeGreaterThan(0);
  for (const { texts, sentence } of sheets) {
    expect(texts.length).toBeGreaterThan(3);
    expect(texts.join(' ')).not.toMatch(/[<>{}]|\*\*/);
    expect(sentence.metric.length).toBeGreaterThan(20);
  }
});

test('a trial is found by its question, its cultivars with their synonyms, and its remarks, each once', () => {
  const { texts, season, kind } = at('trials/autumn-lettuce-2025/');
  expect(kind).toBe('trial');
  expect(season).toBe('autumn 2025');
  for (const text of ['Slate Egret', 'Grey Egret', 'Egret No. 4', 'tip burn on the outer leaves'])
    expect(texts).toContain(text);
  expect(texts[0]).toBe('Do the two newcomers match the check cultivar in autumn light?');
  expect(new Set(texts).size).toBe(texts.length);
});

test('a cultivar that was never grown is found by its name, with its note', () => {
  const never = { id: 'moss-curlew', name: 'Moss Curlew', species: 'Lactuca sativa', note: 'Not sown yet.' };
  const more = searchRecords({ ...library, cultivars: [...library.cultivars, never] });
  const record = more.find(({ path }) => path === 'cultivars/moss-curlew/');
  expect(record).toMatchObject({
    title: 'Moss Curlew',
    sentence: { metric: 'Not sown yet.', us: 'Not sown yet.' },
  });
});

test('sentences are told in both units', () => {
  const { sentence } = at('trials/autumn-lettuce-2025/');
  expect(sentence.metric).toMatch(/\d\sg a plant/);
  expect(sentence.us).toMatch(/\d\soz a plant/);
});
