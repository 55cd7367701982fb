import { cp, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { builtSite, demo } from '../support/site.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const trial = 'autumn-lettuce-2025';
const disclaimer = 'Names of salts are given for information & endorse nothing.';
const statement = 'This garden is open to all.';

const textOf = async (dist: string, path: string): Promise<string> =>
  readFile(join(dist, path, 'index.html'), 'utf8');

test('a trial shows the cautions that it calls for, with their sources and nothing of an institution', async () => {
  const { dist } = await builtSite();
  const page = await textOf(dist, `trials/${trial}`);
  for (const heading of ['Stock solutions.', 'Nitrate in lettuce.', 'Still water and mosquitoes.'])
    expect(page).toContain(heading);
  expect(page).toContain('(EU) No 1258/2011');
  expect(page).not.toContain('class="statements"');
  // Basil has no limit of its own, and grew in a greenhouse.
  const basil = await textOf(dist, 'trials/sweet-basil-2025');
  expect(basil).toContain('Nitrate in leaves.');
  expect(basil).not.toContain('Nitrate in lettuce.');
});

test('a publisher who gives statements has them on trials, fact sheets and the mixing card, as written', async () => {
  const folder = await temporaryFolder();
  await cp(demo, folder, { recursive: true });
  const file = join(folder, 'site.yaml');
  const settings = await readFile(file, 'utf8');
  await writeFile(file, `${settings}disclaimer: "${disclaimer}"\nequal_opportunity: "${statement}"\n`);
  const { dist } = await builtSite(folder);
  for (const path of [`trials/${trial}`, `trials/${trial}/fact-sheet`, 'solution']) {
    const page = await textOf(dist, path);
    expect(page, path).toContain(disclaimer.replace('&', '&amp;'));
    expect(page.split(statement).length - 1, path).toBe(1);
  }
});
