import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite, type View } from '../support/browser.ts';
import { overflow } from '../support/overflow.ts';
import { builtSite, demo } from '../support/site.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

describe.each([
  { name: 'at the root of a host', url: 'https://example.org/', base: '/' },
  { name: 'under a path', url: 'https://example.org/garden/', base: '/garden/' },
])('the search of a site $name', ({ url, base }) => {
  let server: StaticServer;
  beforeAll(async () => {
    server = await serveSite((await builtSite(demo, { url })).dist);
  });
  afterAll(() => server.close());

  /** Opens a page of the site, and afterwards holds that nothing went wrong in it and no other host was asked. */
  async function visit(path: string, look: (page: Page) => Promise<void>, view: View = {}): Promise<void> {
    const { context, page, faults } = await openPage(browser, server, view);
    await page.goto(server.url + path);
    await look(page);
    await context.close();
    expect(faults).toEqual([]);
  }

  test('finds a trial by a word of its question, with its kind, season and finding', async () => {
    await visit('search/', async (page) => {
      await page.keyboard.type('newcomers');
      await told(page, /for “newcomers”\.$/);
      const entry = page.locator('#search-results > li', { hasText: 'Three autumn lettuces' });
      expect(await entry.locator('a').getAttribute('href')).toBe(`${base}trials/autumn-lettuce-2025/`);
      expect(await entry.locator('.note').first().textContent()).toBe('Trial, autumn 2025');
      expect(await entry.locator('p .metric').textContent()).toContain('outweighed the check');
      expect(new Set(await entry.locator('mark').allTextContents())).toEqual(new Set(['newcomers']));
    });
  });

  test('finds a cultivar by its synonym, and leads to its page', async () => {
    await visit('search/?q=siskin+gold', async (page) => {
      await told(page, /found for “siskin gold”\.$/);
      const first = page.locator('#search-results > li').first();
      expect(await first.locator('.note').first().textContent()).toMatch(/^Cultivar, /);
      await first.locator('a').click();
      await page.waitForURL(`**${base}cultivars/gilt-siskin/`);
      expect(await page.locator('h1').textContent()).toBe('Gilt Siskin');
    });
  });

  test('carries what was typed on the home page to the search page, by keyboard alone', async () => {
    await visit('', async (page) => {
      await page.keyboard.press('/');
      expect(await focused(page)).toBe('search-words');
      await page.keyboard.type('tip burn');
      await page.keyboard.press('Enter');
      await page.waitForURL(`**${base}search/?q=tip+burn`);
      await told(page, /pages found for “tip burn”\.$/);
      await page.keyboard.press('/');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowUp');
      const to = await page.evaluate(() => (document.activeElement as HTMLAnchorElement).href);
      expect(to).toBe(
        await page
          .locator('#search-results a')
          .first()
          .evaluate((a) => (a as HTMLAnchorElement).href),
      );
      await page.keyboard.press('Enter');
      await page.waitForURL(to);
    });
  });
});

describe('the search page', () => {
  let server: StaticServer;
  let dist: string;
  beforeAll(async () => {
    ({ dist } = await builtSite());
    server = await serveSite(dist);
  });
  afterAll(() => server.close());

  async function open(path: string, view: View = {}) {
    const visit = await openPage(browser, server, view);
    await visit.page.goto(server.url + path);
    return visit;
  }

  test('shows the answer to the last of what was typed fast, never to an earlier one', async () => {
    const { context, page, faults } = await open('search/');
    const words = ['basil', 'plover', 'strength', 'godwit'];
    for (const word of words) {
      await page.locator('#search-words').fill('');
      await page.keyboard.type(word, { delay: 8 });
    }
    await told(page, /for “godwit”\.$/);
    await page.waitForTimeout(400);
    expect(await page.locator('#search-told').textContent()).toMatch(/for “godwit”\.$/);
    expect(await page.locator('#search-results a').first().textContent()).toBe('Pewter Godwit');
    expect(new URL(page.url()).search).toBe('?q=godwit');
    await context.close();
    expect(faults).toEqual([]);
  });

  test('says in a sentence, announced politely, that nothing was found', async () => {
    const { context, page } = await open('search/?q=xyzzy');
    await told(page, /^Nothing was found for “xyzzy”\.$/);
    expect(await page.locator('#search-told').getAttribute('role')).toBe('status');
    expect(await page.locator('#search-results > li').count()).toBe(0);
    await page.locator('#search-words').fill('');
    await page.waitForFunction(() => document.querySelector('#search-told')?.textContent === '');
    expect(new URL(page.url()).search).toBe('');
    await context.close();
  });

  test('keeps what was asked for when the reader comes back from a result', async () => {
    const { context, page } = await open('search/');
    await page.keyboard.type('dotterel');
    await told(page, /for “dotterel”\.$/);
    await page.locator('#search-results a').first().click();
    await page.waitForURL('**/cultivars/umber-dotterel/');
    await page.goBack();
    await told(page, /for “dotterel”\.$/);
    expect(await page.locator('#search-words').inputValue()).toBe('dotterel');
    await context.close();
  });

  test('shows markup in the address and in what was typed as the text it is', async () => {
    const hostile = '"><img src=x onerror=alert(1)> lettuce';
    const { context, page, faults } = await open(`search/?q=${encodeURIComponent(hostile)}`);
    await page.waitForFunction(() => document.querySelector('#search-told')?.textContent !== '');
    expect(await page.locator('#search-told').textContent()).toContain(hostile);
    expect(await page.locator('main img').count()).toBe(0);
    await context.close();
    expect(faults).toEqual([]);
  });

  test('leaves the key alone while the reader types, and once it is turned off', async () => {
    const { context, page } = await open('search/?q=wren');
    await page.locator('#search-words').focus();
    await page.keyboard.press('End');
    await page.keyboard.type('/');
    expect(await page.locator('#search-words').inputValue()).toBe('wren/');
    await page.locator('#search-key').uncheck();
    await page.keyboard.press('/');
    expect(await focused(page)).toBe('search-key');
    await page.goto(`${server.url}`);
    expect(await page.locator('#search-key').isChecked()).toBe(false);
    await page.keyboard.press('/');
    expect(await focused(page)).not.toBe('search-words');
    await context.close();
  });

  test('shows the units that the reader chose', async () => {
    const { context, page } = await open('search/?q=newcomers');
    await told(page, /for “newcomers”\.$/);
    await page.getByRole('button', { name: 'US' }).click();
    const sentence = page.locator('#search-results li').first().locator('div > p').first();
    expect(await sentence.innerText()).toMatch(/\soz a plant/);
    expect(await sentence.innerText()).not.toMatch(/\sg a plant/);
    await context.close();
  });

  test('is not there without JavaScript, where a sentence leads to the lists', async () => {
    const { context, page } = await open('search/', { javaScript: false });
    expect(await page.locator('form.search').isVisible()).toBe(false);
    expect(await page.locator('main').innerText()).toContain('needs JavaScript');
    expect(await page.locator('main a[href$="/trials/"]').isVisible()).toBe(true);
    await page.goto(server.url);
    expect(await page.locator('form.search').isVisible()).toBe(false);
    await context.close();
  });

  test('passes axe and fits with results, light and dark, at 1280 and 320 px', async () => {
    const faults: string[] = [];
    for (const width of [1280, 320]) {
      const { context, page } = await open('search/?q=lettuce', { width });
      await told(page, /for “lettuce”\.$/);
      expect(await page.locator('#search-results > li').count()).toBeGreaterThan(3);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        faults.push(...(await axeCheck(page)).map((fault) => `${colorScheme} ${width} px: ${fault}`));
      }
      faults.push(...(await overflow(page)));
      await context.close();
    }
    expect(faults).toEqual([]);
  });
});

test('a site built where no index can be made says so and shows no box', async () => {
  const env = { PAGEFIND_EXTENDED_BINARY_PATH: '/nowhere/pagefind' };
  const { dist, output } = await builtSite(demo, { env });
  expect(output).toContain('The site has no search: its index cannot be made here');
  const server = await serveSite(dist);
  const { context, page, faults } = await openPage(browser, server);
  await page.goto(`${server.url}search/`);
  expect(await page.locator('main').innerText()).toContain('The site has no search');
  expect(await page.locator('main a[href$="/trials/"]').isVisible()).toBe(true);
  await page.goto(server.url);
  expect(await page.locator('form.search').count()).toBe(0);
  await context.close();
  await server.close();
  expect(faults).toEqual([]);
});

async function told(page: Page, sentence: RegExp): Promise<void> {
  const { source } = sentence;
  await page.waitForFunction(
    (pattern) => new RegExp(pattern).test(document.querySelector('#search-told')?.textContent ?? ''),
    source,
  );
}

const focused = (page: Page) => page.evaluate(() => document.activeElement?.id);
