import { createHash } from 'node:crypto';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { axeCheck } from './axe.ts';
import { launchBrowser, openPage, serveSite } from './browser.ts';
import { brokenLinks } from './links.ts';
import { pageWeight } from './page-weight.ts';
import { policyFaults } from './policy.ts';
import { survey, type SurveyedPage } from './survey.ts';
import { temporaryFolder } from './temporary-folder.ts';

// The measures that the site tests go by, held against small pages with known faults.
const script = 'document.body.dataset.ran = "yes";';
const hash = createHash('sha256').update(script).digest('base64');
const rest = "object-src 'none'; base-uri 'self'";
const good = `default-src 'self'; script-src 'self' 'sha256-${hash}'; ${rest}`;

const icon = '<svg xmlns="http://www.w3.org/2000/svg"/>';

interface Parts {
  policy?: string;
  before?: string;
  body?: string;
}

function html({ policy = good, before = '', body = '' }: Parts): string {
  return `<!doctype html><html lang="en"><head><meta charset="utf-8">${before}
    <meta http-equiv="Content-Security-Policy" content="${policy}"><title>A page</title>
    <link rel="canonical" href="https://example.org/garden/"><link rel="icon" href="/garden/icon.svg"></head>
    <body><main><h1>Heading</h1>${body}</main></body></html>`;
}

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

async function surveyOf(files: Record<string, string>) {
  const dist = await temporaryFolder({ 'icon.svg': icon, ...files });
  const surveyed = await survey(browser, dist);
  return { dist, ...surveyed };
}

test('surveys what the HTML says, scripts off, under the site’s base path', async () => {
  const body = `<p>Text.</p><table><tbody><tr><td>1</td></tr></tbody></table><script>${script}</script>`;
  const { base, pages, faults } = await surveyOf({ 'index.html': html({}), 'a/index.html': html({ body }) });
  expect(new URL(base).pathname).toBe('/garden/');
  expect(faults).toEqual([]);
  expect(pages.map(({ path }) => path)).toEqual(['', 'a/']);
  expect(pages[1]).toMatchObject({
    language: 'en',
    title: 'A page',
    headings: ['Heading'],
    tableRows: 1,
    policy: good,
    scripts: [{ inline: script, type: '' }],
    overflow: [],
  });
  expect(pages[1]?.text).toContain('Text.');
});

test('finds links, assets and fragments that lead nowhere', async () => {
  const body = `
    <h2 id="here">Here</h2><p id="twice">1</p><p id="twice">2</p>
    <a href="#here">good</a> <a href="a/#there">good</a> <a href="a/weights.csv">good</a>
    <a href="https://example.com/">another host</a>
    <a href="#nowhere">bad</a> <a href="a/#nowhere">bad</a> <a href="b/">bad</a>
    <a href="/elsewhere/">bad</a> <a href="javascript:void 0">bad</a> <img src="photo.jpg" alt="">`;
  const { dist, ...surveyed } = await surveyOf({
    'index.html': html({ body }),
    'a/index.html': html({ body: '<p id="there">There</p>' }),
    'a/weights.csv': 'container\n',
  });
  expect(brokenLinks(surveyed, dist)).toEqual([
    '/: href="#nowhere" names an id that is not there',
    '/: href="a/#nowhere" names an id that is not there',
    '/: href="b/" leads nowhere',
    '/: href="/elsewhere/" leaves the base path',
    '/: href="javascript:void 0" runs script',
    '/: src="photo.jpg" leads nowhere',
    '/: the id "twice" stands twice',
  ]);
  expect(surveyed.faults).toContain('/garden/ got 404 for /garden/photo.jpg');
});

test('finds what makes a page scroll sideways, but not what scrolls by itself', async () => {
  const wide = '<div id="wide" style="width: 500px">wide</div>';
  const { pages } = await surveyOf({
    'index.html': html({
      body: `<div style="overflow-x: auto">${wide}</div>`,
      policy: "style-src 'unsafe-inline'",
    }),
    'a/index.html': html({ body: wide, policy: "style-src 'unsafe-inline'" }),
  });
  expect(pages[0]?.overflow).toEqual([]);
  expect(pages[1]?.overflow[0]).toMatch(/^needs 5\d\d of 320 px$/);
  expect(pages[1]?.overflow[1]).toMatch(/^div#wide/);
});

test('notes requests to another host and errors on the console', async () => {
  const dist = await temporaryFolder({
    'index.html': html({ body: '<img src="https://example.com/a.png" alt=""><script>1</script>' }),
  });
  const server = await serveSite(dist);
  const { context, page, faults } = await openPage(browser, server);
  await page.goto(server.url);
  await context.close();
  await server.close();
  expect(faults).toContain('/garden/ asked another host: https://example.com/a.png');
  expect(faults.some((fault) => fault.includes('console') && fault.includes('inline script'))).toBe(true);
});

test('axe finds a picture without words', async () => {
  const dist = await temporaryFolder({ 'index.html': html({ body: '<img src="data:," id="mute">' }) });
  const server = await serveSite(dist);
  const { context, page } = await openPage(browser, server);
  await page.goto(server.url);
  const found = await axeCheck(page);
  await context.close();
  await server.close();
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/^image-alt: #mute/);
});

test('weighs text compressed, and scripts both linked and inside', async () => {
  const noise = Array.from({ length: 4000 }, (_, i) => ((i * 7919) % 9973).toString(36)).join(' ');
  const dist = await temporaryFolder({
    'index.html': html({ body: `<script src="a.js"></script><script>${script}</script>` }),
    'a.js': `/* ${noise} */`,
    'unused.js': `/* ${noise} */`,
  });
  const server = await serveSite(dist);
  const weight = await pageWeight(browser, server, '');
  await server.close();
  expect(weight.fonts).toBe(0);
  expect(weight.scripts).toBeGreaterThan(2000);
  expect(weight.scripts).toBeLessThan(noise.length);
  expect(weight.text).toBeGreaterThan(weight.scripts);
  expect(weight.text).toBeLessThan(weight.scripts + 1000);
});

describe('a page’s policy', () => {
  const page = async (parts: Parts): Promise<SurveyedPage> => {
    const { pages } = await surveyOf({ 'index.html': html(parts) });
    const [only] = pages;
    if (only === undefined) throw new Error('no page was surveyed');
    return only;
  };

  test('is good with the hash of its script, and with data in script elements', async () => {
    const data = '<script type="application/ld+json">{}</script>';
    expect(policyFaults(await page({ body: `<script>${script}</script>${data}` }))).toEqual([]);
  });

  const weak = [
    { parts: { before: '<title>first</title>' }, fault: 'the policy does not follow the charset' },
    { parts: { policy: `default-src *; ${rest}` }, fault: "default-src is *, not 'self'" },
    { parts: { policy: "default-src 'self'; base-uri 'self'" }, fault: "object-src is not set, not 'none'" },
    {
      parts: { policy: `default-src 'self'; script-src 'self' 'unsafe-inline'; ${rest}` },
      fault: "scripts are allowed by 'unsafe-inline'",
    },
    {
      parts: { body: '<script>other()</script>' },
      fault: 'an inline script has no hash in the policy: other()',
    },
    { parts: { body: '<p onclick="x()">press</p>' }, fault: 'script in an attribute: p onclick' },
  ];

  test.each(weak)('is refused where $fault', async ({ parts, fault }) => {
    expect(policyFaults(await page(parts))).toContain(fault);
  });

  test('is missed where there is none', async () => {
    const { pages } = await surveyOf({ 'index.html': '<meta charset="utf-8"><h1>bare</h1>' });
    expect(pages.flatMap(policyFaults)).toContain('there is no policy');
  });
});
