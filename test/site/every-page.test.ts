import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Browser } from 'playwright-core';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { brokenLinks } from '../support/links.ts';
import { overflow } from '../support/overflow.ts';
import { pagesOf } from '../support/pages.ts';
import { policyFaults } from '../support/policy.ts';
import { builtSite, demo } from '../support/site.ts';
import { survey, type Survey, type SurveyedPage } from '../support/survey.ts';

const sites = [
  { name: 'at the root of a host', url: 'https://example.org/' },
  { name: 'under a path', url: 'https://example.org/garden/' },
];

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

describe.each(sites)('the demo site $name', ({ url }) => {
  let dist: string;
  let surveyed: Survey;

  beforeAll(async () => {
    dist = (await builtSite(demo, { url })).dist;
    surveyed = await survey(browser, dist);
  });

  const perPage = (faultsOf: (page: SurveyedPage) => string[]) => {
    expect(surveyed.pages.length).toBeGreaterThan(0);
    return surveyed.pages.flatMap((page) => faultsOf(page).map((fault) => `/${page.path}: ${fault}`));
  };

  test('stands under the path of its url', () => {
    expect(new URL(surveyed.base).pathname).toBe(new URL(url).pathname);
  });

  test('loads without a fault and asks nothing of another host, scripts off', () => {
    expect(surveyed.faults).toEqual([]);
  });

  test('has no link, asset or fragment that leads nowhere', () => {
    expect(brokenLinks(surveyed, dist)).toEqual([]);
  });

  test('begins each head with its charset and a policy that allows no unsafe script', () => {
    expect(perPage(policyFaults)).toEqual([]);
  });

  test('names each page in its title, its one h1 and its language', () => {
    const faults = perPage(({ title, headings, language }) => [
      ...(title.trim() === '' ? ['no title'] : []),
      ...(headings.length === 1 && headings[0] !== ''
        ? []
        : [`${headings.length} headings of the first order`]),
      ...(language === '' ? ['no language'] : []),
    ]);
    expect(faults).toEqual([]);
  });

  test('is readable with scripts off: text everywhere, tables on each trial page', () => {
    const faults = perPage(({ path, text, tableRows }) => [
      ...(text.length < 40 ? [`the main part holds only "${text}"`] : []),
      ...(/^trials\/[^/]+\/$/.test(path) && tableRows === 0 ? ['no table'] : []),
    ]);
    expect(faults).toEqual([]);
  });

  test('never scrolls sideways at 320 px, scripts off', () => {
    expect(perPage((page) => page.overflow)).toEqual([]);
  });

  test('loads without a fault, keeps to its host and fits 320 px, scripts on', async () => {
    const server = await serveSite(dist);
    const { context, page, faults } = await openPage(browser, server, { width: 320 });
    for (const path of await pagesOf(dist)) {
      await page.goto(server.url + path, { waitUntil: 'load' });
      faults.push(...(await overflow(page)).map((fault) => `/${path}: ${fault}`));
    }
    await context.close();
    await server.close();
    expect(faults).toEqual([]);
  });

  test('prints without its navigation and within the paper', async () => {
    const server = await serveSite(dist);
    // A4 at 96 dots an inch, less margins of 15 mm.
    const { context, page, faults } = await openPage(browser, server, { width: 680, media: 'print' });
    for (const path of await pagesOf(dist)) {
      await page.goto(server.url + path);
      const shown = await page.locator(':is(nav, .ways):visible').count();
      if (shown > 0) faults.push(`/${path}: ${shown} navigations are printed`);
      // What can be moved sideways on the screen is cut off on paper.
      const cut = await page
        .locator('main :is(pre, .scroll, .drawing):visible')
        .evaluateAll((all) =>
          all
            .filter((each) => each.scrollWidth > each.clientWidth + 1)
            .map((each) => each.textContent.slice(0, 40)),
        );
      faults.push(...cut.map((text) => `/${path}: "${text}" is cut off`));
      faults.push(...(await overflow(page)).map((fault) => `/${path}: ${fault}`));
    }
    await context.close();
    await server.close();
    expect(faults).toEqual([]);
  });
});
