import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser } from 'playwright-core';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { pagesOf } from '../support/pages.ts';
import { builtSite } from '../support/site.ts';

const colours = ['light', 'dark'] as const;
const widths = [1280, 320];

let browser: Browser;
let server: StaticServer;
let paths: string[];

beforeAll(async () => {
  const { dist } = await builtSite();
  browser = await launchBrowser();
  server = await serveSite(dist);
  paths = await pagesOf(dist);
});

afterAll(async () => {
  await browser.close();
  await server.close();
});

// One load serves all four looks; both widths run side by side because axe keeps one core busy.
test('axe finds nothing on any page, light and dark, at 1280 and 320 px', { timeout: 600_000 }, async () => {
  expect(paths.length).toBeGreaterThan(0);
  const faults = await Promise.all(widths.map((width) => axeFaults(width)));
  expect(faults.flat()).toEqual([]);
});

test("in the reader's own colours too, what is pressed, open and led to can be told from the rest", async () => {
  const { context, page } = await openPage(browser, server);
  await page.emulateMedia({ forcedColors: 'active' });
  const grounds = (selector: string) =>
    page.locator(selector).evaluateAll((all) => all.map((each) => getComputedStyle(each).backgroundColor));
  const rules = (selector: string) =>
    page.locator(selector).evaluateAll((all) => all.map((each) => getComputedStyle(each).borderBottomWidth));
  await page.goto(`${server.url}data/`);
  const [metric, us] = await grounds('.units-switch button');
  expect(metric).not.toBe(us);
  expect(new Set(await rules('.site-header nav a'))).toEqual(new Set(['0px', '2px']));
  const row = await page.locator('main tr[id]').first().getAttribute('id');
  await page.goto(`${server.url}data/#${row ?? ''}`);
  expect((await rules(`[id="${row ?? ''}"] > td`))[0]).toBe('3px');
  await context.close();
});

async function axeFaults(width: number): Promise<string[]> {
  const { context, page } = await openPage(browser, server, { width });
  const faults: string[] = [];
  for (const path of paths) {
    await page.goto(server.url + path);
    for (const colorScheme of colours) {
      await page.emulateMedia({ colorScheme });
      const found = await axeCheck(page);
      faults.push(...found.map((fault) => `/${path} ${colorScheme} ${width} px: ${fault}`));
    }
  }
  await context.close();
  return faults;
}
