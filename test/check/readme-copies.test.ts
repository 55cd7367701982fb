import { cp, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { printProblem } from '../../src/check/print-problem.ts';
import { loadContent } from '../../src/commands/load-content.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const readme = await readFile(join(root, 'README.md'), 'utf8');
const copied = [...readme.matchAll(/\| \[`(content\/trials\/[a-z0-9-]+)`\]/g)].map(([, path]) => path!);

it('names the demo trials to copy', () => {
  expect(copied.length).toBeGreaterThan(3);
});

it.each(copied)('a copy of %s, alone and under another name, has no problem', async (path) => {
  const folder = await mkdtemp(join(tmpdir(), 'tankside-copy-'));
  try {
    for (const name of ['site.yaml', 'cultivars.yaml'])
      await cp(join(root, 'content', name), join(folder, name));
    const trial = join(folder, 'trials', 'my-own-trial');
    await cp(join(root, path), trial, { recursive: true });
    for (const name of ['factsheet.mdx', 'factsheet.es.mdx', 'versions']) {
      expect(readme).toContain(name);
      await rm(join(trial, name), { recursive: true, force: true });
    }
    expect((await loadContent(folder)).problems.map(printProblem)).toEqual([]);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
