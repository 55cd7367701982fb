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
import { builtSite, demo } from '../support/site.ts';
import { odsFile, xlsxFile, type MadeSheet } from '../support/spreadsheets.ts';

let browser: Browser;
let server: StaticServer;
let scratch: string;

beforeAll(async () => {
  const { dist } = await builtSite();
  browser = await launchBrowser();
  server = await serveSite(dist);
  scratch = await mkdtemp(join(tmpdir(), 'tankside-import-page-'));
});

afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(scratch, { recursive: true });
});

/** Two tanks of two by two; one plant has a sign for its weight, and one column only its grower can name. */
const sheet: MadeSheet = {
  name: 'Harvest',
  rows: [
    ['Autumn lettuces'],
    ['Tank', 'Row', 'Col', 'Variety', 'Q'],
    ...['T1', 'T2'].flatMap((tank, at) =>
      [1, 2].flatMap((row) =>
        [1, 2].map((column) => [
          tank,
          row,
          column,
          (row + column + at) % 2 === 0 ? 'Cobalt Wren' : 'Slate Egret',
          at === 1 && row === 2 && column === 2 ? 'x' : 5 + row + column / 4,
        ]),
      ),
    ),
  ],
};

async function give(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  await page.setInputFiles('#sheet-file', { name, mimeType: '', buffer: Buffer.from(bytes) });
  await page.waitForFunction(() => document.querySelector('#reading')?.hasAttribute('hidden') === false);
}

/** Waits until a part of the page says something. */
async function said(page: Page, part: string, text: string): Promise<void> {
  await page.waitForFunction(([where, what]) => document.querySelector(where)?.textContent === what, [
    part,
    text,
  ] as const);
}

/** The folder that is handed out, written where the check can read it. */
async function folderOf(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#take-zip')]);
  const files = unzipSync(await readFile(await download.path()));
  for (const [name, bytes] of Object.entries(files)) {
    await mkdir(join(scratch, dirname(name)), { recursive: true });
    await writeFile(join(scratch, name), bytes);
  }
  return join(scratch, Object.keys(files)[0]!.split('/')[0]!);
}

describe('The page that brings a spreadsheet in', () => {
  test('is corrected by the grower, and hands out a folder that passes the check', async () => {
    const { context, page, faults } = await openPage(browser, server);
    await page.goto(`${server.url}import/`);
    await give(page, 'weights.xlsx', xlsxFile([sheet]));
    // Without a column of weights there is no table: the row of headings is named.
    await page.fill('.sheet-reading input', 'two');
    await page.press('.sheet-reading input', 'Tab');
    await said(page, '#told', 'Name a row, such as 3, or rows, such as 3-4.');
    await page.fill('.sheet-reading input', '2');
    await page.press('.sheet-reading input', 'Tab');
    await page.selectOption('select[aria-label="Column E is taken for"]', 'fresh_weight');
    await page.selectOption('select[aria-label="Unit of column E"]', 'oz');
    await said(page, '#verdict', '1 thing must be said or mended first.');
    expect(await page.textContent('#problems')).toContain('Harvest!E10: "x" is not a weight');
    await page.selectOption('#words select', 'dead');
    await said(page, '#verdict', '8 rows of the harvest: 45 cells used, 1 not used.');
    expect(await page.textContent('#not-used-list')).toContain('Autumn lettuces');
    expect(await page.isVisible('#taking')).toBe(false);
    await page.fill('#crop', 'Lettuce');
    await page.fill('#harvested', '2025-10-20');
    await page.selectOption('#randomised', 'yes');
    await page.waitForSelector('#taking:not([hidden])');
    const { trial, problems } = await loadTrial(await folderOf(page));
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    const last = trial!.harvest.at(-1)!;
    expect(last).toMatchObject({ container: 'T2', row: 2, column: 2, status: 'dead' });
    expect(trial!.harvest[0]!.values['fresh_weight']).toBeCloseTo(6.25 * 28.349523125, 10);
    expect(trial!.metadata.sources?.[0]).toMatchObject({
      file: 'source/weights.xlsx',
      words: { x: 'dead' },
      columns: { E: 'fresh_weight in oz' },
    });
    expect(faults).toEqual([]);
    await context.close();
  });

  test('brings a sheet into the folder of a trial, and keeps all else in it', async () => {
    const { context, page, faults } = await openPage(browser, server);
    await page.goto(`${server.url}import/`);
    await page.check('#into-folder');
    const folder = join(demo, 'trials', 'four-lettuces-2024');
    await page.setInputFiles('#target-drop input[name="folder"]', folder);
    await page.waitForFunction(() => document.querySelector('#target-name')?.textContent !== '');
    const before = await loadTrial(folder);
    const rows = before.trial!.harvest.map(({ container, row, column, values, status }) => [
      container,
      row,
      column,
      values['fresh_weight'] ?? status,
    ]);
    await give(
      page,
      'weights.ods',
      odsFile([{ name: 'Weights', rows: [['Tank', 'Row', 'Column', 'Weight (g)'], ...rows] }]),
    );
    await page.waitForSelector('#problems li');
    expect(await page.textContent('#problems')).toMatch(/harvest\.csv has values in \d+ rows already/);
    const after = await loadTrial(await folderOf(page));
    expect(after.trial!.harvest.map(({ values }) => values)).toEqual(
      before.trial!.harvest.map(({ values }) => values),
    );
    expect([...after.trial!.files.keys()].sort()).toEqual(
      [...before.trial!.files.keys(), 'source/weights.ods'].sort(),
    );
    expect(after.trial!.files.get('layout.csv')).toEqual(before.trial!.files.get('layout.csv'));
    expect(faults).toEqual([]);
    await context.close();
  });

  test('says why a file cannot be read', async () => {
    const { context, page } = await openPage(browser, server);
    await page.goto(`${server.url}import/`);
    const locked = Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
    await page.setInputFiles('#sheet-file', { name: 'locked.xlsx', mimeType: '', buffer: locked });
    await said(
      page,
      '#told',
      'The file is locked with a password, or in an old format: open it in the spreadsheet and save it as .xlsx or .ods without a password.',
    );
    expect(await page.isVisible('#result')).toBe(false);
    await context.close();
  });

  test.each([
    { width: 1280, colours: 'light' },
    { width: 320, colours: 'dark' },
  ] as const)('breaks no rule of accessibility with a sheet open, at $width px', async (view) => {
    const { context, page } = await openPage(browser, server, view);
    await page.goto(`${server.url}import/`);
    await give(
      page,
      'weights.xlsx',
      xlsxFile([
        { ...sheet, rows: sheet.rows.map((row, at) => (at === 1 ? [...row.slice(0, 4), 'Weight'] : row)) },
      ]),
    );
    await page.click('#result summary');
    expect(await axeCheck(page)).toEqual([]);
    expect(await overflow(page)).toEqual([]);
    await context.close();
  });
});
