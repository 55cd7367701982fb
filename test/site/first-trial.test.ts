/** A first trial as a grower without a terminal goes through it: planned, weighed and checked in the browser, then built. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { writeGrowingContent } from '../support/growing-trial.ts';
import { builtSite } from '../support/site.ts';

let browser: Browser;
let server: StaticServer;
let scratch: string;
const id = 'radish-spring-2026';

beforeAll(async () => {
  browser = await launchBrowser();
  server = await serveSite((await builtSite()).dist);
  scratch = await mkdtemp(join(tmpdir(), 'tankside-first-'));
});

afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(scratch, { recursive: true, force: true });
});

async function downloaded(page: Page, button: string): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click(button)]);
  const path = join(scratch, download.suggestedFilename());
  await download.saveAs(path);
  return path;
}

test('goes from a question to a page that says what was planned, and passes the check on the way', async () => {
  const { context, page, faults } = await openPage(browser, server, { width: 390, height: 760 });
  // Two cultivars in three tanks of six, as a first trial would be.
  await page.goto(`${server.url}plan/`);
  await page.fill('#question', 'Does the newcomer weigh as much as the one I grow?');
  await page.fill('#crop', 'Radish');
  await page.fill('#year', '2026');
  await page.fill('#person', 'Imke Farrant');
  await page.fill('#levels', 'My own\nNewcomer');
  await page.fill('#containers', '3');
  await page.fill('#rows', '2');
  await page.fill('#columns', '3');
  await page.check('#record-bolted');
  await page.fill('#seed', '8812');
  await page.click('button[type="submit"]');
  const planned = await downloaded(page, '#take');
  expect(planned).toMatch(new RegExp(`${id}\\.zip$`));

  await page.goto(`${server.url}check/`);
  await page.setInputFiles('input[type="file"]:not([webkitdirectory])', planned);
  await page.locator('#result-heading', { hasText: `Nothing to mend: ${id}` }).waitFor();

  await page.goto(`${server.url}weigh/`);
  await page.locator('#weigh[data-ready]').waitFor({ state: 'attached' });
  await page.setInputFiles('#files', planned);
  await page.fill('#set-date', '2026-05-20');
  await page.click('#set-up-form button');
  for (let plant = 0; plant < 18; plant += 1) {
    if (plant === 4) {
      await page.click('[data-status="dead"]');
      continue;
    }
    for (const digit of String(20 + ((plant * 7) % 11))) await page.click(`[data-key="${digit}"]`);
    await page.click('#weigh-next');
    await page.click(`[data-mark="${plant % 3 === 0 ? '1' : '0'}"]`);
  }
  await page.locator('#finish-open', { hasText: 'Every place is entered.' }).waitFor();
  await page.check('#edit-status');
  const weighed = await downloaded(page, '#take-zip');
  expect(faults).toEqual([]);
  await context.close();

  // What a grower uploads in the browser: the folder as it came out, beside a site.yaml.
  const content = await mkdtemp(join(scratch, 'content-'));
  await writeGrowingContent(content);
  const files = Object.entries(unzipSync(new Uint8Array(await readFile(weighed))));
  expect(files.map(([name]) => name).sort()).toEqual(
    [
      'harvest.csv',
      'layout.csv',
      'trial.yaml',
      ...['SHA256SUMS', 'harvest.csv', 'layout.csv', 'trial.yaml'].map((name) => `versions/0.1.0/${name}`),
    ].map((name) => `${id}/${name}`),
  );
  for (const [name, bytes] of files) {
    await mkdir(dirname(join(content, 'trials', name)), { recursive: true });
    await writeFile(join(content, 'trials', name), bytes);
  }
  const built = await builtSite(content);
  const own = await serveSite(built.dist);
  const visit = await openPage(browser, own);
  await visit.page.goto(`${own.url}trials/${id}/`);
  const text = (await visit.page.textContent('main'))!.replaceAll(/\s+/g, ' ');
  expect(text).toContain('The plan was published as version 0.1.0, and was kept to.');
  // 18 plants, less the mean, 2 between tanks and 1 between the two: tested, as a plan in blocks promises.
  expect(text).toMatch(/per plant set = block \+ cultivar, with error between positions/);
  expect(text).toContain('rests on the fresh weight per plant set of 18 plants');
  expect(text).toContain('Of what was set, 1 died.');
  await visit.context.close();
  await own.close();
}, 120_000);
