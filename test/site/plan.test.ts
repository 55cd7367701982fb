import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadTrial } from '../../src/commands/load-content.ts';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { overflow } from '../support/overflow.ts';
import { builtSite } from '../support/site.ts';
import { unlevelInputs } from '../support/unlevel-inputs.ts';

let browser: Browser;
let server: StaticServer;
let scratch: string;

beforeAll(async () => {
  const { dist } = await builtSite();
  browser = await launchBrowser();
  server = await serveSite(dist);
  scratch = await mkdtemp(join(tmpdir(), 'tankside-plan-page-'));
});

afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(scratch, { recursive: true });
});

/** Says what is asked, compared and at hand: four tanks of 3 x 2, three cultivars. */
async function fill(page: Page, levels = 'Cobalt Wren\nSlate Egret\nHazel Dunnock'): Promise<void> {
  await page.fill('#question', 'Does either newcomer match the check?');
  await page.fill('#year', '2027');
  await page.fill('#person', 'Imke Farrant');
  await page.fill('#levels', levels);
  await page.fill('#rows', '3');
  await page.fill('#columns', '2');
  await page.fill('#seed', '8812');
}

async function folderOf(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#take')]);
  const files = unzipSync(await readFile(await download.path()));
  for (const [name, bytes] of Object.entries(files)) {
    await mkdir(join(scratch, dirname(name)), { recursive: true });
    await writeFile(join(scratch, name), bytes);
  }
  return join(scratch, dirname(Object.keys(files)[0]!));
}

describe('The page for planning', () => {
  test.each([1280, 900, 700])('sets inputs level at %i px, however long their labels are', async (width) => {
    const { context, page } = await openPage(browser, server, { width });
    await page.goto(`${server.url}plan/`);
    // As in a longer language, or with the reader's own text size.
    await page.locator('label[for="rows"], label[for="season"]').evaluateAll((labels) => {
      for (const label of labels) label.textContent += ', of which there may be several and not only one';
    });
    expect(await unlevelInputs(page)).toEqual([]);
    await context.close();
  });

  test('proposes blocks, says what they can tell, and hands out a folder that passes the check', async () => {
    const { context, page, faults } = await openPage(browser, server);
    await page.goto(`${server.url}plan/`);
    await fill(page);
    await page.click('button[type="submit"]');
    expect(await page.textContent('#told')).toBe('1 way to lay it out.');
    // 4 blocks of 3 treatments twice over leave 24 - 4 - 2 error degrees of freedom.
    expect(await page.locator('.proposal').first().textContent()).toMatch(
      /^Randomised blocks, each container a block.*On 18 error degrees of freedom/,
    );
    const folder = await folderOf(page);
    const { trial, problems } = await loadTrial(folder);
    expect(problems).toEqual([]);
    expect(trial?.metadata).toMatchObject({
      status: 'planned',
      design: { arrangement: 'randomised blocks', seed: 8812, lot: { method: 'lots-1' } },
    });
    expect(trial?.positions).toHaveLength(24);
    expect(faults).toEqual([]);
    await context.close();
  });

  test('draws the same layout from the same seed, and another from another', async () => {
    const { context, page } = await openPage(browser, server);
    await page.goto(`${server.url}plan/`);
    const maps = async () => {
      await page.click('button[type="submit"]');
      return page.locator('#maps').innerHTML();
    };
    await fill(page);
    const first = await maps();
    expect(await maps()).toBe(first);
    await page.click('#again');
    expect(await page.inputValue('#seed')).not.toBe('8812');
    await page.fill('#seed', '8812');
    expect(await maps()).toBe(first);
    await context.close();
  });

  test('says no to one container for each treatment, unless the grower insists', async () => {
    const { context, page } = await openPage(browser, server);
    await page.goto(`${server.url}plan/`);
    await fill(page, 'Half\nFull\nDouble\nTriple');
    await page.fill('#factor', 'Solution strength');
    await page.uncheck('#allot-position');
    await page.check('#allot-container');
    await page.click('button[type="submit"]');
    expect(await page.textContent('#refusals')).toMatch(/cannot tell the treatment from the container/);
    expect(await page.locator('.proposal').count()).toBe(0);
    await page.check('#unreplicated');
    await page.click('button[type="submit"]');
    expect(await page.textContent('.proposal')).toMatch(/^Unreplicated/);
    await context.close();
  });

  test('plans several factors in differing containers, seedlings graded, with a stated variation', async () => {
    const { context, page, faults } = await openPage(browser, server);
    await page.goto(`${server.url}plan/`);
    await fill(page, 'Cobalt Wren\nSlate Egret');
    expect(await page.isVisible('#factor2')).toBe(false);
    await page.click('#another');
    await page.fill('#factor2', 'Solution strength');
    await page.fill('#levels2', '0.5\n1');
    await page.selectOption('#bound2', 'container');
    await page.fill('#grids', 'North 2x2\nSouth 2x2\nEast 2x3\nWest 2x3');
    await page.fill('#sizes', Array.from({ length: 21 }, (_, index) => `${String(20 + index)},5`).join(' '));
    await page.fill('#variation', '12,5');
    await page.click('button[type="submit"]');
    expect(await page.locator('.proposal label').allTextContents()).toEqual([
      'Split plot, lots drawn for containers, then for positions (20 plants, seed 8812)',
    ]);
    const said = await page.locator('.proposal').textContent();
    expect(said).toContain('12.5% between units: as stated');
    expect(said).toContain('It is one season in one place');
    const folder = await folderOf(page);
    const { trial, problems } = await loadTrial(folder);
    expect(problems).toEqual([]);
    expect(trial?.metadata.containers.map(({ id, rows, columns }) => [id, rows, columns])).toEqual([
      ['North', 2, 2],
      ['South', 2, 2],
      ['East', 2, 3],
      ['West', 2, 3],
    ]);
    // The smallest of 21 stays over.
    const seedlings = (await readFile(join(folder, 'seedlings.csv'), 'utf8')).trimEnd().split('\n').slice(1);
    expect(seedlings.map((row) => row.split(',')[3]).sort((a, b) => Number(a) - Number(b))).toEqual(
      Array.from({ length: 20 }, (_, index) => String(index + 2)),
    );
    await page.fill('#grids', 'North 2 by 2');
    await page.click('button[type="submit"]');
    expect(await page.textContent('#grids-fault')).toMatch(/^“North 2 by 2” is not understood/);
    expect(faults).toEqual([]);
    await context.close();
  });

  test('says beside each field what is not understood, and leads to the first', async () => {
    const { context, page } = await openPage(browser, server);
    await page.goto(`${server.url}plan/`);
    await page.click('button[type="submit"]');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('question');
    expect(await page.textContent('#question-fault')).toMatch(/^Write a little more/);
    expect(await page.getAttribute('#year', 'aria-invalid')).toBe('true');
    expect(await page.isVisible('#result')).toBe(false);
    await context.close();
  });

  test.each([
    [1280, 'light'],
    [320, 'dark'],
  ] as const)('is accessible with its proposals shown, at %i px, %s', async (width, colours) => {
    const { context, page } = await openPage(browser, server, { width, colours });
    await page.goto(`${server.url}plan/`);
    await fill(page);
    await page.click('#another');
    await page.click('button[type="submit"]');
    expect(await page.isVisible('#result')).toBe(true);
    expect(await axeCheck(page)).toEqual([]);
    expect(await overflow(page)).toEqual([]);
    await context.close();
  });

  test('says without JavaScript what does the same', async () => {
    const { context, page } = await openPage(browser, server, { javaScript: false });
    await page.goto(`${server.url}plan/`);
    expect(await page.textContent('main')).toContain('npm run -s tankside -- plan');
    expect(await page.isVisible('#plan-form')).toBe(false);
    await context.close();
  });
});
