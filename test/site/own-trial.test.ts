import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { root } from '../../src/commands/folders.ts';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { builtSite } from '../support/site.ts';

let browser: Browser;
let server: StaticServer;
let scratch: string;

beforeAll(async () => {
  const { dist } = await builtSite();
  browser = await launchBrowser();
  server = await serveSite(dist);
  scratch = await mkdtemp(join(tmpdir(), 'tankside-own-trial-'));
});

afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(scratch, { recursive: true });
});

async function give(page: Page, input: 'folder' | 'files', path: string): Promise<void> {
  await page.setInputFiles(`#own-trial-drop [name="${input}"]`, path);
  await page.waitForFunction(() => {
    const told = document.querySelector('#own-trial-told')?.textContent ?? '';
    return told !== '' && !told.startsWith('Checking');
  });
}

const table = [
  'Tank,Row,Column,Variety,Weight (g)',
  ...[1, 2].flatMap((row) => [`A,${row},1,Slate Egret,${140 + row}`, `A,${row},2,Cobalt Wren,${120 + row}`]),
  '',
].join('\n');

test('a broken folder dropped on the comparison is told what to mend, and takes no part', async () => {
  const { context, page, faults } = await openPage(browser, server);
  await page.goto(`${server.url}compare/`);
  await give(page, 'folder', join(root, 'test', 'broken', 'weight-not-a-number--letter'));
  expect(await page.textContent('#own-trial-told')).toBe('It takes no part until it is mended.');
  expect(await page.locator('#own-trial .message').allTextContents()).toEqual([
    '"12O" is not a number; write digits only, such as 120',
  ]);
  expect(await page.isHidden('#own-trial-list')).toBe(true);
  expect(await axeCheck(page)).toEqual([]);
  expect(faults).toEqual([]);
  await context.close();
});

test('a table alone says what it lacks, or is asked about, and then stands among the trials', async () => {
  const { context, page, faults } = await openPage(browser, server);
  await page.goto(`${server.url}compare/`);
  const file = join(scratch, 'my weights.csv');
  await writeFile(file, 'cultivar,weight\nSlate Egret,140\n');
  await give(page, 'files', file);
  expect(await page.textContent('#own-trial-told')).toContain('the column container');
  await writeFile(file, table);
  await give(page, 'files', file);
  expect(await page.isVisible('#own-table')).toBe(true);
  expect(await axeCheck(page)).toEqual([]);
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.method()));
  await page.fill('#own-table [name="harvested"]', '2025-10-20');
  await page.selectOption('#own-table [name="allotted"]', 'position');
  await page.click('#own-table button[type="submit"]');
  await page.locator('#own-trial-list li').waitFor();
  expect(await page.locator('#own-trial-list li').count()).toBe(1);
  expect(requests.filter((method) => method !== 'GET')).toEqual([]);
  await page.click('#own-trial-list button');
  await page.locator('#own-trial-list').waitFor({ state: 'hidden' });
  expect(faults).toEqual([]);
  await context.close();
});
