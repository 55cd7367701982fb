import { appendFile, cp, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { gather } from '../../src/commands/gather.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { brokenLinks } from '../support/links.ts';
import { otherSite, trialFiles } from '../support/other-site.ts';
import { overflow } from '../support/overflow.ts';
import { policyFaults } from '../support/policy.ts';
import { builtSite, demo, fileHashes } from '../support/site.ts';
import { survey } from '../support/survey.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const cultivars = `- {id: cobalt-wren, name: Cobalt Wren, species: Lactuca sativa}
- {id: slate-egret, name: Slate Egret, species: Lactuca sativa}
- {id: own, name: Otter Plover, species: Lactuca sativa}
`;
const own = 'autumn-lettuce-2025';

test('a trial of another site is compared, marked with its origin everywhere, and published nowhere again', async () => {
  const there = await otherSite(cultivars, {
    // The id of a trial of the demo, and a title that tries to do harm.
    [own]: trialFiles(
      ['Two lettuces in two tanks', '"<b>Ottersweet</b> & sons"'],
      ['slate-egret', 'own'],
      ['Imke Farrant', 'Wren Talloway'],
    ),
  });
  const here = await temporaryFolder();
  await cp(demo, here, { recursive: true });
  await appendFile(join(here, 'site.yaml'), `gather: [{title: Otterbrook, address: '${there.address}'}]\n`);
  expect((await gather(here)).problems).toEqual([]);
  await there.close();
  const { dist, output } = await builtSite(here);
  expect(output).not.toMatch(/gather/);
  const read = (path: string) => readFile(join(dist, path), 'utf8');
  const page = `${there.address}trials/${own}/`;

  for (const path of [
    'trials/',
    'data/',
    'compare/',
    'crops/lettuce/',
    'cultivars/cobalt-wren/',
    'cultivars/otter-plover/',
  ]) {
    const html = await read(`${path}index.html`);
    expect(html, path).toContain(`href="${page}"`);
    expect(html, path).toContain('&lt;b&gt;Ottersweet&lt;/b&gt; &amp; sons');
    expect(html, path).not.toContain('<b>Ottersweet');
    expect(html, path).toContain('Otterbrook');
    expect(html, path).toMatch(/gathered \d+\s\w+\s\d{4}/);
    if (path !== 'trials/') expect(html, path).toContain('Wren Talloway');
  }

  const before = await fileHashes((await builtSite(demo)).dist);
  const after = await fileHashes(dist);
  const published = (paths: Iterable<string>) =>
    [...paths].filter((path) => /^(data|trials)\/[^/]+\//.test(path));
  expect(published(after.keys())).toEqual(published(before.keys()));
  // What is said of the site's own trials does not hang on what others publish.
  for (const path of [
    'data/all-weights.csv',
    'data/datapackage.json',
    `data/${own}/findings.json`,
    `data/${own}/datacite.json`,
    'feed.xml',
  ]) {
    expect(after.get(path), path).toBe(before.get(path));
  }
  const index = JSON.parse(await read('data/index.json')) as {
    datasets: { id: string }[];
    gathered: { id: string; page: string; creators: string[]; site: { title: string } }[];
  };
  expect(index.datasets.filter(({ id }) => id === own)).toHaveLength(1);
  expect(index.gathered).toMatchObject([
    { id: own, page, creators: ['Wren Talloway'], site: { title: 'Otterbrook' } },
  ]);
  expect(await read('data/catalog.jsonld')).toContain(`"@id": "${there.address}data/${own}/"`);
  expect(await read('sitemap.xml')).not.toContain(there.address);

  const browser = await launchBrowser();
  try {
    const surveyed = await survey(browser, dist);
    expect(surveyed.faults).toEqual([]);
    expect(brokenLinks(surveyed, dist)).toEqual([]);
    expect(surveyed.pages.flatMap((each) => [...policyFaults(each), ...each.overflow])).toEqual([]);
    const server = await serveSite(dist);
    const { page: opened, context } = await openPage(browser, server, { width: 320 });
    for (const path of ['trials/', 'data/', 'compare/', 'crops/lettuce/', 'cultivars/cobalt-wren/']) {
      await opened.goto(server.url + path);
      expect(await axeCheck(opened), path).toEqual([]);
      expect(await overflow(opened), path).toEqual([]);
    }
    await context.close();
    await server.close();
  } finally {
    await browser.close();
  }

  const again = await builtSite(here, { copy: 'second' });
  expect(await fileHashes(again.dist)).toEqual(after);
}, 300_000);

test('a copy that was altered here does not stop the site, and takes no part', async () => {
  const there = await otherSite(cultivars, { 'two-lettuces': trialFiles() });
  const here = await temporaryFolder();
  await cp(demo, here, { recursive: true });
  await appendFile(join(here, 'site.yaml'), `gather: [{title: Otterbrook, address: '${there.address}'}]\n`);
  expect((await gather(here)).problems).toEqual([]);
  const port = new URL(there.address).port;
  const harvest = join(here, 'gathered', `127-0-0-1-${port}-garden`, 'two-lettuces', 'harvest.csv');
  await writeFile(harvest, (await readFile(harvest, 'utf8')).replace('131', '999'));
  const { dist, output } = await builtSite(here);
  expect(output).toContain('gathered-altered');
  expect(await readFile(join(dist, 'compare', 'index.html'), 'utf8')).not.toContain('Otterbrook');
}, 120_000);
