import { readFile } from 'node:fs/promises';
import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { sha256 } from '../../src/publish/sha256.ts';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { runPython } from '../support/python.ts';
import { openR } from '../support/webr.ts';
import { builtSite } from '../support/site.ts';

const run = promisify(execFile);
const id = 'autumn-lettuce-2025';

describe('the data page', () => {
  let browser: Browser;
  let dist: string;
  let server: StaticServer;
  let weights: string;
  let mean: number;
  const example: Record<string, string> = {};

  beforeAll(async () => {
    ({ dist } = await builtSite());
    browser = await launchBrowser();
    server = await serveSite(dist);
    weights = await readFile(join(dist, 'data', id, 'weights.csv'), 'utf8');
    const [header, ...rows] = weights
      .trim()
      .split('\n')
      .map((line) => line.split(','));
    const values = rows.flatMap((row) => row[header!.indexOf('fresh_weight')] || []).map(Number);
    mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const { page, context } = await openPage(browser, server);
    await page.goto(`${server.url}data/${id}/`);
    for (const language of ['R', 'Python', 'JavaScript']) {
      example[language] = (await page.getByLabel(`Lines in ${language}`).textContent()) ?? '';
    }
    await context.close();
  });
  afterAll(async () => {
    await browser.close();
    await server.close();
  });

  /** The example with the address that it names, which is where the site will stand, put to the local server. */
  const local = (language: string): string =>
    example[language]!.replace(/"https?:[^"]*?\/data\//, `"${server.url}data/`);

  test('gives three lines in each language, with the address of the weights', () => {
    for (const code of Object.values(example)) {
      expect(code.split('\n')).toHaveLength(3);
      expect(code).toMatch(new RegExp(`"https?://[^"]+/data/${id}/weights\\.csv"`));
    }
  });

  test('gives JavaScript that works as pasted', async () => {
    const { stdout } = await run(process.execPath, ['--input-type=module', '--eval', local('JavaScript')]);
    expect(Number(stdout)).toBeCloseTo(mean, 10);
  });

  test('gives R that works as pasted, the file at hand where R cannot reach the address', async () => {
    const r = await openR();
    try {
      await r.writeFile('/home/web_user/weights.csv', weights);
      const code = example['R']!.replace(/"https?:[^"]*"/, '"/home/web_user/weights.csv"');
      expect(await r.run(code)).toBeCloseTo(mean, 10);
    } finally {
      r.close();
    }
  });

  test('gives Python that works as pasted, the file at hand where Python cannot reach the address', async () => {
    const bytes = await readFile(join(dist, 'data', id, 'weights.csv'));
    const address = /"(https?:[^"]*)"/.exec(example['Python']!)![1]!;
    expect(Number(await runPython(example['Python']!, {}, { address, bytes }))).toBeCloseTo(mean, 10);
  });

  test('gives the checksum of every file as it lies there', async () => {
    const { page, context } = await openPage(browser, server);
    await page.goto(`${server.url}data/${id}/`);
    const lines = ((await page.getByLabel('Checksums').textContent()) ?? '').trim().split('\n');
    expect(lines.length).toBeGreaterThan(20);
    for (const line of lines) {
      const [sum, name] = line.split('  ');
      expect(sha256(await readFile(join(dist, 'data', id, name!))), name).toBe(sum);
    }
    await context.close();
  });

  test('copies the citation', async () => {
    const { page, context } = await openPage(browser, server);
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.goto(`${server.url}data/${id}/`);
    await page.getByRole('button', { name: 'Copy' }).click();
    await page.getByText('Copied.').waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toMatch(
      /^Orla Fennimoor \(2025\)\. Three autumn lettuces in four tanks \(version 1\.1\.0\) \[Data set\]\./,
    );
    await context.close();
  });
});
