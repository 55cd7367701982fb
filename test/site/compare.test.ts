import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { StaticServer } from '../../src/commands/static-server.ts';
import type { Seasons } from '../../src/model/generated/seasons.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { overflow } from '../support/overflow.ts';
import { builtSite } from '../support/site.ts';

let browser: Browser;
let server: StaticServer;
let seasons: Seasons[];

beforeAll(async () => {
  const { dist } = await builtSite();
  browser = await launchBrowser();
  server = await serveSite(dist);
  seasons = JSON.parse(await readFile(join(dist, 'data', 'seasons.json'), 'utf8')) as Seasons[];
});

afterAll(async () => {
  await browser.close();
  await server.close();
});

/** Opens the page and waits until its data have come. */
async function open(query = '', view: Parameters<typeof openPage>[2] = {}) {
  const visit = await openPage(browser, server, view);
  await visit.page.goto(`${server.url}compare/${query}`);
  await visit.page.waitForLoadState('networkidle');
  return visit;
}

const answer = (page: Page) => page.locator('section[data-crop]:not([hidden]) .finding').textContent();
const told = (page: Page, words: RegExp) =>
  page.waitForFunction(
    (source) => new RegExp(source).test(document.querySelector('#compare-told')?.textContent ?? ''),
    words.source,
  );

async function kept(page: Page, click: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), click()]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

async function keptTable(page: Page, table: string): Promise<string[][]> {
  const { bytes } = await kept(page, () => page.click(`[data-table="${table}"]`));
  return bytes
    .toString()
    .trim()
    .split('\n')
    .map((line) => line.split(','));
}

describe('The page that compares', () => {
  test('keeps a choice in the address, tells of it, and goes back and forward', async () => {
    const { context, page, faults } = await open();
    const whole = await answer(page);
    await page.check('input[name="replicated"]');
    await page.waitForURL(/\?replicated=only$/);
    await told(page, /^2 trials, 3 cultivars\./);
    const chosen = await answer(page);
    expect(chosen).not.toBe(whole);
    await page.goBack();
    await page.waitForURL(/compare\/$/);
    await expect.poll(() => answer(page)).toBe(whole);
    expect(await page.isChecked('input[name="replicated"]')).toBe(false);
    await page.goForward();
    await expect.poll(() => answer(page)).toBe(chosen);
    expect(faults).toEqual([]);
    await context.close();
  });

  test('shows the same to whoever opens a shared address', async () => {
    const first = await open();
    await first.page.check('input[name="replicated"]');
    await first.page.locator('[data-choices="cultivars"] summary').click();
    await first.page.locator('input[name="cultivar"][value="slate-egret"]').uncheck();
    await first.page.waitForURL(/without=slate-egret/);
    const query = new URL(first.page.url()).search;
    const said = await answer(first.page);
    await first.context.close();
    const second = await open(query);
    await expect.poll(() => answer(second.page)).toBe(said);
    expect(await second.page.isChecked('input[name="replicated"]')).toBe(true);
    await second.context.close();
  });

  test('says what an address names that is not there, and goes on without it', async () => {
    const { context, page } = await open('?cultivar=no-such-wren&crop=no-such-crop');
    await expect.poll(() => page.isVisible('#not-known')).toBe(true);
    expect(await page.textContent('#not-known')).toMatch(
      /no-such-crop.*no-such-wren|no-such-wren.*no-such-crop/,
    );
    expect(await answer(page)).toBeTruthy();
    await context.close();
  });

  test('hands out the numbers of seasons.json, to full precision', async () => {
    const { context, page } = await open();
    const entry = seasons.find(
      ({ species, measure }) => species === 'Lactuca sativa' && measure === 'per_pot',
    )!;
    const [head, ...rows] = await keptTable(page, 'adjusted');
    expect(head?.slice(0, 4)).toEqual(['cultivar', 'cultivar_name', 'unit', 'adjusted_mean']);
    expect(new Map(rows.map((row) => [row[0], Number(row[3])]))).toEqual(
      new Map(entry.adjusted_means.map(({ cultivar, mean }) => [cultivar, mean])),
    );
    const [, ...cells] = await keptTable(page, 'means');
    expect(cells).toHaveLength(entry.cells.length);
    const [, ...pairs] = await keptTable(page, 'differences');
    expect(pairs.map((row) => Number(row[5])).sort()).toEqual(
      entry.differences.map(({ estimate }) => estimate).sort(),
    );
    await context.close();
  });

  test('hands out a figure as SVG that stands by itself, and as a picture', async () => {
    const { context, page, faults } = await open();
    const button = (kind: string) => page.locator(`section:not([hidden]) [data-keep="${kind}"]`).first();
    const svg = await kept(page, () => button('svg').click());
    const text = svg.bytes.toString();
    expect(svg.name).toMatch(/^lettuce-.*\.svg$/);
    expect(text).toMatch(/^<svg[^>]* xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(text).toContain('Russet Plover');
    expect(text).not.toMatch(/ class="|var\(--/);
    const png = await kept(page, () => button('png').click());
    expect([...png.bytes.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    expect(png.bytes.length).toBeGreaterThan(5000);
    expect(faults).toEqual([]);
    await context.close();
  });

  test('is worked by the keyboard alone, and keeps its place', async () => {
    const { context, page } = await open();
    await page.focus('input[name="replicated"]');
    await page.keyboard.press('Space');
    await page.waitForURL(/replicated=only/);
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe('replicated');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toBe('Start over');
    await page.keyboard.press('Enter');
    await page.waitForURL(/compare\/$/);
    await context.close();
  });

  test('turns to another crop, and says where nothing can be compared', async () => {
    const { context, page } = await open();
    await page.selectOption('#choose-crop', { label: 'Sweet basil' });
    await told(page, /No cultivars can be compared\.$/);
    expect(new URL(page.url()).searchParams.get('crop')).toBe('sweet-basil');
    await context.close();
  });

  test.each([
    [1280, 'light'],
    [320, 'dark'],
  ] as const)('is accessible with all choices unfolded, at %i px, %s', async (width, colours) => {
    const { context, page } = await open('?replicated=only', { width, colours });
    for (const summary of await page.locator('[data-choices] summary').all()) {
      if (!(await summary.evaluate((each) => (each.parentElement as HTMLDetailsElement).open)))
        await summary.click();
    }
    expect(await axeCheck(page)).toEqual([]);
    expect(await overflow(page)).toEqual([]);
    await context.close();
  });

  test('is the comparison as published where no script runs', async () => {
    const { context, page } = await open('', { javaScript: false });
    expect(await page.isVisible('#choose')).toBe(false);
    expect(await page.locator('section[data-crop]').count()).toBeGreaterThan(1);
    expect(await page.locator('section[data-crop] .finding').first().textContent()).toMatch(/Russet Plover/);
    await context.close();
  });
});

test('The list of cultivars sorts by its headings', async () => {
  const { context, page } = await openPage(browser, server);
  await page.goto(`${server.url}cultivars/`);
  const names = () => page.locator('tbody th').allTextContents();
  const heading = page.locator('thead button').first();
  await heading.click();
  const up = await names();
  expect(up).toEqual([...up].sort((a, b) => a.localeCompare(b)));
  await heading.click();
  expect(await names()).toEqual([...up].reverse());
  expect(await page.locator('thead th').first().getAttribute('aria-sort')).toBe('descending');
  await context.close();
});
