import { expect, test } from 'vitest';
import { builtSite, demo, fileHashes } from '../support/site.ts';

test('two builds of the same content are alike to the byte', async () => {
  const first = await fileHashes((await builtSite(demo)).dist);
  const second = await fileHashes((await builtSite(demo, { copy: 'second' })).dist);
  expect(first.size).toBeGreaterThan(0);
  const paths = [...new Set([...first.keys(), ...second.keys()])];
  expect(paths.filter((path) => first.get(path) !== second.get(path))).toEqual([]);
});
