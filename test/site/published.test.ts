import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import type { StaticServer } from '../../src/commands/static-server.ts';
import type { Findings } from '../../src/model/findings.ts';
import {
  barleyRows,
  idOf,
  orchardSprays,
  publishedContent,
  type Spray,
} from '../published/as-trial-folders.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { expectClose } from '../support/close.ts';
import { builtSite, runCommand } from '../support/site.ts';
import { openR, type R } from '../support/webr.ts';

/** The rows of a table on the page, by their heading: the text of each cell. */
async function tableRows(page: Page, caption: RegExp): Promise<Map<string, string[]>> {
  const table = page.locator('table').filter({ has: page.locator('caption', { hasText: caption }) });
  const rows = await table
    .first()
    .locator('tbody tr')
    .evaluateAll((lines) =>
      lines.map((line) => [...line.querySelectorAll('th, td')].map((cell) => cell.textContent!.trim())),
    );
  return new Map(rows.map(([heading, ...cells]) => [heading!, cells]));
}

/** A printed number, and how far from it the true one may lie: half of its last digit. */
function printed(text: string): { value: number; within: number } {
  const plain = text.replaceAll('\u202F', '').replace('\u2212', '-');
  return { value: Number(plain), within: 0.5 * 10 ** -(plain.split('.')[1]?.length ?? 0) + 1e-9 };
}

function expectPrinted(text: string, exact: number): void {
  const { value, within } = printed(text);
  expect(Math.abs(value - exact), `${text} is printed for ${exact}`).toBeLessThanOrEqual(within);
}

describe('published trials', () => {
  let browser: Browser;
  let server: StaticServer;
  let r: R;
  let content: string;
  let sprays: Spray[];

  beforeAll(async () => {
    r = await openR();
    sprays = await orchardSprays(r);
    content = join(inject('runFolder'), 'published-content');
    for (const [path, text] of Object.entries(await publishedContent(r))) {
      await mkdir(dirname(join(content, path)), { recursive: true });
      await writeFile(join(content, path), text);
    }
    const { dist } = await builtSite(content);
    browser = await launchBrowser();
    server = await serveSite(dist);
  });
  afterAll(async () => {
    r.close();
    await browser.close();
    await server.close();
  });

  const findingsOf = async (id: string): Promise<Findings> =>
    (await (await fetch(`${server.url}data/${id}/findings.json`)).json()) as Findings;

  const open = async (id: string): Promise<Page> => {
    const { page } = await openPage(browser, server);
    await page.goto(`${server.url}trials/${id}/`);
    return page;
  };

  test('pass the check without an error or a false alarm', async () => {
    const { code, stdout } = await runCommand(['check', content]);
    expect(stdout.trim()).toBe('0 errors, 0 warnings, 0 notes');
    expect(code).toBe(0);
  });

  test("OrchardSprays: the page's numbers are R's mean, sd and quantiles, to the digits printed", async () => {
    const page = await open('orchard-sprays');
    const table = await tableRows(page, /per pot/);
    const quartiles = await tableRows(page, /quartile|lowest/i);
    expect([...table.keys()]).toEqual([...'ABCDEFGH']);
    for (const [spray, [n, mean, sd, cv]] of table) {
      const expected = (await r.run(
        'unname(c(length(x), mean(x), sd(x), 100 * sd(x) / mean(x), quantile(x, 0:4 / 4)))',
        {
          x: sprays.filter(({ treatment }) => treatment === spray).map(({ decrease }) => decrease),
        },
      )) as number[];
      expect(Number(n)).toBe(expected[0]);
      expectPrinted(mean!, expected[1]!);
      expectPrinted(sd!, expected[2]!);
      expectPrinted(cv!, expected[3]!);
      const five = quartiles.get(spray)!.slice(-5);
      five.forEach((text, index) => expectPrinted(text, expected[4 + index]!));
    }
    await page.context().close();
  });

  test('OrchardSprays: the Latin square is analysed as by aov, pairs as by TukeyHSD', async () => {
    const findings = await findingsOf('orchard-sprays');
    const entry = findings.inference.find(({ measure, cut }) => measure === 'per_pot' && cut === 'all')!;
    const given = {
      y: sprays.map(({ decrease }) => decrease),
      a: sprays.map(({ rowpos }) => rowpos),
      b: sprays.map(({ colpos }) => colpos),
      t: sprays.map(({ treatment }) => treatment),
    };
    const [f, p, error, ...tukey] = (await r.run(
      `fit <- aov(y ~ factor(a) + factor(b) + factor(t))
       s <- summary(fit)[[1]]
       k <- TukeyHSD(fit, 'factor(t)')[[1]]
       unname(c(s[3, 4], s[3, 5], s[4, 1], k['B-A', ], k['H-G', ]))`,
      given,
    )) as number[];
    const row = entry.anova.find(({ term }) => term === 'spray')!;
    expectClose(row.f, f!, 1e-9);
    expectClose(row.p, p!, 1e-8);
    expect(row.error_df).toBe(error);
    for (const [index, [a, b]] of [
      ['A', 'B'],
      ['G', 'H'],
    ].entries()) {
      const pair = entry.differences.find((each) => each.a['spray'] === a && each.b['spray'] === b)!;
      const [estimate, lower, upper, adjusted] = tukey.slice(4 * index, 4 * index + 4);
      expectClose(-pair.estimate!, estimate!, 1e-9);
      // R's own limits and p carry about 4 and 6 digits.
      expectClose(-pair.upper!, lower!, 1e-4);
      expectClose(-pair.lower!, upper!, 1e-4);
      expect(Math.abs(pair.p_adjusted! - adjusted!)).toBeLessThan(1e-6);
    }
  });

  test('barley: every published yield is on its page, described and not tested', async () => {
    const rows = (await barleyRows()).filter(({ site, year }) => site === 'Morris' && year === 1932);
    const page = await open('barley-morris-1932');
    const table = await tableRows(page, /per pot/);
    expect(table.size).toBe(10);
    for (const row of rows) expectPrinted(table.get(row.variety)![1]!, row.yield);
    const said = await page.locator('main').innerText();
    expect(said).toContain('tests nothing');
    expect(said).toContain('bu/acre');
    expect(said).not.toMatch(/\bp\s*[=<]\s*0|\d\s*g\b|kg\/m²\s*\d|oz/);
    const findings = await findingsOf('barley-morris-1932');
    for (const entry of findings.inference) {
      expect(entry).toMatchObject({ verdict: 'not tested', means: [], differences: [], anova: [] });
    }
    for (const row of rows) {
      const found = findings.treatments.find(({ treatment }) => treatment['variety'] === idOf(row.variety))!;
      expect(found.per_pot!.mean).toBe(row.yield);
    }
    await page.context().close();
  });

  test('barley: summary.csv, weights.csv and findings.json tell the same numbers', async () => {
    const id = 'barley-waseca-1931';
    const get = async (name: string) => (await fetch(`${server.url}data/${id}/${name}`)).text();
    const findings = await findingsOf(id);
    const parse = (text: string) =>
      text
        .trim()
        .split('\n')
        .map((line) => line.split(','));
    const [summaryHead, ...summary] = parse(await get('summary.csv'));
    const [weightsHead, ...weights] = parse(await get('weights.csv'));
    expect(weights).toHaveLength(10);
    for (const line of weights) {
      const variety = line[weightsHead!.indexOf('variety')]!;
      const value = Number(line[weightsHead!.indexOf('yield')]);
      const found = findings.treatments.find(({ treatment }) => treatment['variety'] === variety)!;
      expect(found.per_pot!.mean).toBe(value);
      const own = summary.find((each) => each[summaryHead!.indexOf('variety')] === variety)!;
      expect(own.map(Number)).toContain(value);
    }
  });

  test('seasons: the twelve barley trials are compared as the check values say', async () => {
    const seasons = (await (await fetch(`${server.url}data/seasons.json`)).json()) as {
      measure: string;
      species: string;
      anova: { term: string; f: number }[];
      adjusted_means: { cultivar: string; mean: number }[];
    }[];
    const barley = seasons.find(
      ({ species, measure }) => species === 'Hordeum vulgare' && measure === 'per_pot',
    )!;
    expectClose(barley.anova.find(({ term }) => term === 'trial')!.f, 41.58656764365501, 1e-6);
    expectClose(
      barley.adjusted_means.find(({ cultivar }) => cultivar === 'trebi')!.mean,
      39.399993333333335,
      1e-6,
    );
  });
});
