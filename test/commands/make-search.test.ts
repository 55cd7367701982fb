import { createHash } from 'node:crypto';
import { afterEach, beforeAll, expect, test, vi } from 'vitest';
import { libraryOf } from '../../src/commands/library-of.ts';
import { loadContent } from '../../src/commands/load-content.ts';
import { makeSearch } from '../../src/commands/make-search.ts';
import type { Library } from '../../src/model/library.ts';
import { demo } from '../support/site.ts';

let library: Library;
beforeAll(async () => {
  library = libraryOf(await loadContent(demo));
});
afterEach(() => {
  vi.unstubAllEnvs();
});

/** Enough trials that the index falls into several pieces. */
function manyTrials(): Library {
  const trials = Array.from({ length: 300 }, (_, index) =>
    library.trials.map((item) => ({
      ...item,
      trial: {
        ...item.trial,
        id: `${item.trial.id}-${index}`,
        metadata: { ...item.trial.metadata, title: `Trial ${index} of word${(index * 7919) % 300}` },
      },
    })),
  ).flat();
  return { ...library, trials: trials.slice(0, 300) };
}

test('the index is alike to the byte each time it is made', async () => {
  const many = manyTrials();
  const [first, second] = [await makeSearch(many), await makeSearch(many)];
  const sums = ({ files }: typeof first) =>
    files.map(({ name, bytes }) => [name, createHash('sha256').update(bytes).digest('hex')]);
  expect(first.missing).toBeNull();
  expect(first.files.length).toBeGreaterThan(300);
  expect(sums(second)).toEqual(sums(first));
});

test('it holds what the page loads and its licence, and no ready-made interface', async () => {
  const { files } = await makeSearch(library);
  const names = files.map(({ name }) => name.replace(/_[0-9a-f]+/, '_x'));
  expect([...new Set(names)].sort()).toEqual([
    'pagefind/LICENSE.txt',
    'pagefind/fragment/en_x.pf_fragment',
    'pagefind/index/en_x.pf_index',
    'pagefind/pagefind-entry.json',
    'pagefind/pagefind-worker.js',
    'pagefind/pagefind.en_x.pf_meta',
    'pagefind/pagefind.js',
    'pagefind/wasm.en.pagefind',
  ]);
  const licence = files.find(({ name }) => name.endsWith('LICENSE.txt'));
  expect(new TextDecoder().decode(licence?.bytes)).toContain('MIT License');
});

test('a site in a language without a stemmer of its own has an index all the same', async () => {
  const { files, missing } = await makeSearch({ ...library, site: { ...library.site, language: 'cy' } });
  expect(missing).toBeNull();
  expect(files.map(({ name }) => name)).toContain('pagefind/wasm.unknown.pagefind');
});

test.each([
  ['PAGEFIND_EXTENDED_BINARY_PATH', '/nowhere/pagefind', 'its program does not run: ENOENT'],
  ['npm_config_arch', 'abacus', `its program does not exist for ${process.platform}-abacus`],
])(
  'where the program that makes it is not to be had (%s), a sentence says so',
  async (name, value, reason) => {
    vi.stubEnv(name, value);
    const { files, missing } = await makeSearch(library);
    expect(files).toEqual([]);
    expect(missing).toBe(`The site has no search: its index cannot be made here (${reason}).`);
  },
);
