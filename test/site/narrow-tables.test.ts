/** Tables, and all else that is wide, on a phone: what is in them can be read there, not only be moved to. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser } from 'playwright-core';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { overflow } from '../support/overflow.ts';
import { pagesOf } from '../support/pages.ts';
import { builtSite } from '../support/site.ts';

let browser: Browser;
let server: StaticServer;
let dist: string;

beforeAll(async () => {
  browser = await launchBrowser();
  ({ dist } = await builtSite());
  server = await serveSite(dist);
});

afterAll(async () => {
  await browser.close();
  await server.close();
});

const path = 'trials/autumn-lettuce-2025/';

test('a sentence in a cell is not squeezed to a word a line', async () => {
  const { context, page } = await openPage(browser, server, { width: 320 });
  await page.goto(server.url + path);
  const cells = await page
    .locator('main td:visible')
    .evaluateAll((all) =>
      all
        .filter(({ textContent, className }) => textContent.length > 40 && className !== 'number')
        .map((each) => ({ text: each.textContent, width: each.getBoundingClientRect().width })),
    );
  expect(cells.length).toBeGreaterThan(2);
  expect(cells.filter(({ width }) => width < 160)).toEqual([]);
  await context.close();
});

test('a name of one long word leaves room for the numbers beside it', async () => {
  const { context, page } = await openPage(browser, server, { width: 320 });
  await page.goto(server.url + path);
  const table = page.locator('main .scroll', { hasText: 'Fresh weight per plant harvested' }).first();
  const heading = table.locator('tbody th').first();
  await heading.evaluate((cell) => {
    cell.textContent = 'Winterbutterkopfsalatmischungssorte';
  });
  const seen = await table.boundingBox();
  expect(seen!.width).toBeLessThan(300);
  expect((await heading.boundingBox())!.width).toBeLessThan(seen!.width / 2);
  expect(await overflow(page)).toEqual([]);
  await context.close();
});

test('what is moved sideways is reached by the keys and has a name, with scripts and without', async () => {
  const faults: string[] = [];
  for (const javaScript of [true, false]) {
    const { context, page } = await openPage(browser, server, { width: 320, javaScript });
    for (const path of await pagesOf(dist)) {
      await page.goto(server.url + path);
      const unreached = await page.locator('main *:visible:not(svg *)').evaluateAll((all) =>
        all
          .filter((each) => each.scrollWidth > each.clientWidth + 1)
          .filter((each) => /auto|scroll/.test(getComputedStyle(each).overflowX))
          .filter((each) => (each as HTMLElement).tabIndex < 0 || (each.ariaLabel ?? '') === '')
          .map((each) => each.textContent.slice(0, 40)),
      );
      faults.push(...unreached.map((text) => `/${path}: ${text}`));
    }
    await context.close();
  }
  expect(faults).toEqual([]);
});
