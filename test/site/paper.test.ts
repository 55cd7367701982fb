/** What is taken to the tank on paper: weighing sheets and pot labels, in the real browser. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { growingId, growingPlants, writeGrowingContent } from '../support/growing-trial.ts';
import { overflow } from '../support/overflow.ts';
import { builtSite } from '../support/site.ts';

let browser: Browser;
let server: StaticServer;
let content: string;

beforeAll(async () => {
  content = await mkdtemp(join(tmpdir(), 'tankside-paper-'));
  await writeGrowingContent(content);
  browser = await launchBrowser();
  server = await serveSite((await builtSite(content)).dist);
});

afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(content, { recursive: true, force: true });
});

const sheets = `trials/${growingId}/weighing-sheet/`;
const labels = `trials/${growingId}/labels/`;

describe('The maps of a trial', () => {
  test('are printed as large as the sheet allows, not as narrow as a column can be', async () => {
    const { context, page } = await openPage(browser, server, { width: 680, media: 'print' });
    await page.goto(`${server.url}trials/${growingId}/`);
    const maps = await page.locator('.maps svg.fixed').evaluateAll((all) =>
      all.map((each) => ({
        drawn: Number(each.getAttribute('width')),
        printed: each.getBoundingClientRect().width,
      })),
    );
    expect(maps).toHaveLength(4);
    for (const { drawn, printed } of maps) {
      expect(drawn).toBeGreaterThan(250);
      expect(printed).toBeCloseTo(Math.min(drawn, 680), 0);
    }
    await context.close();
  });
});

describe('The weighing sheets', () => {
  test('have a line for every plant in walking order, the map, and blanks for all that is written by hand', async () => {
    const { context, page } = await openPage(browser, server, { javaScript: false });
    await page.goto(server.url + sheets);
    const lines = await page.locator('.weighing-sheet').evaluateAll((each) =>
      each.flatMap((sheet) =>
        [...sheet.querySelectorAll('tbody tr')].map((row) => {
          const cells = [...row.querySelectorAll('td')].map(({ textContent }) => textContent);
          return [sheet.querySelector('h2')!.firstChild!.textContent!.trim(), ...cells].join();
        }),
      ),
    );
    const named = { wren: 'Wren', egret: 'Egret', plover: 'Plover' };
    expect(lines).toEqual(
      growingPlants.map(({ container, row, column, level }) =>
        [container, row, column, named[level], '', '', ''].join(),
      ),
    );
    const first = page.locator('.weighing-sheet').first();
    expect(await first.locator('thead th').allTextContents()).toEqual(
      ['T1 No.', 'Row', 'Column', 'Treatment', 'Fresh weight, g', 'Status', 'Remark'].map(
        (text) => expect.stringContaining(text) as string,
      ),
    );
    expect(await first.locator('dt').allTextContents()).toEqual([
      'Date',
      'Cut',
      'Scale',
      'Tare',
      'Weighed by',
      'Written by',
      'First total',
      'Second total',
      'Initials',
    ]);
    expect(await first.locator('svg').count()).toBe(1);
    await page.emulateMedia({ media: 'print' });
    // Large enough for a wet hand: at least 8 mm a line, at 96 px an inch.
    const height = (await first.locator('tbody tr').first().boundingBox())!.height;
    expect((height * 25.4) / 96).toBeGreaterThan(8);
    expect(await page.locator('h1').isVisible()).toBe(false);
    await context.close();
  });

  test('can leave the treatments off, so that the one who weighs does not know them', async () => {
    const { context, page } = await openPage(browser, server);
    await page.goto(server.url + sheets);
    const first = page.locator('.weighing-sheet').first();
    expect(await first.locator('td.treatment').first().isVisible()).toBe(true);
    await page.check('#without-treatments');
    expect(await first.locator('td.treatment').first().isVisible()).toBe(false);
    expect(await first.locator('svg').isVisible()).toBe(false);
    await context.close();
  });
});

describe('The pot labels', () => {
  test('stand one for each pot, on the grid that is asked for', async () => {
    const { context, page } = await openPage(browser, server);
    await page.goto(server.url + labels);
    const first = page.locator('.pot-labels li').first();
    expect(await page.locator('.pot-labels li').count()).toBe(96);
    expect(await first.locator('strong').textContent()).toBe('T1 1 1');
    const across = () =>
      page.locator('.pot-labels li').evaluateAll((all) => {
        const top = all[0]!.getBoundingClientRect().top;
        return all.filter((label) => label.getBoundingClientRect().top === top).length;
      });
    expect(await across()).toBe(3);
    await page.fill('[name="across"]', '5');
    await page.fill('[name="down"]', '4');
    await page.fill('[name="height"]', '200');
    expect(await across()).toBe(5);
    // 200 mm over 4 labels is 50 mm each, 189 px at 96 px an inch.
    expect((await first.boundingBox())!.height).toBeCloseTo((50 * 96) / 25.4, 0);
    await page.goto(`${server.url}${labels}?across=2&down=999x`);
    expect(await across()).toBe(2);
    expect(await page.inputValue('[name="down"]')).toBe('8');
    await context.close();
  });
});

describe('Long names', () => {
  test('move no label off its place, and send no line of a sheet to the next', async () => {
    const { context, page } = await openPage(browser, server, { media: 'print', width: 680 });
    await page.goto(server.url + labels);
    const heights = await page.locator('.pot-labels li').evaluateAll((all) => {
      all[0]!.querySelector('span')!.textContent = 'A cultivar of a name that goes on '.repeat(9);
      all[1]!.querySelector('strong')!.textContent = 'A container of a long name 10 12';
      return all.map((label) => {
        const { top, bottom } = label.getBoundingClientRect();
        const within = [...label.querySelectorAll('strong, small')].every((part) => {
          const box = part.getBoundingClientRect();
          return box.top >= top && box.bottom <= bottom;
        });
        return [Math.round(((bottom - top) * 25.4) / 96), within];
      });
    });
    expect(heights).toEqual(heights.map(() => [30, true]));
    await page.goto(server.url + sheets);
    const breaks = await page.locator('.weighing-sheet table').evaluateAll((tables) =>
      tables.map((table) => {
        for (const row of [...table.querySelectorAll('tbody tr')].slice(8)) row.remove();
        return getComputedStyle(table).breakInside;
      }),
    );
    expect(breaks).toEqual(breaks.map(() => 'auto'));
    await context.close();
  });
});

describe.each([
  [1280, 'light'],
  [320, 'dark'],
] as const)('At %i px, %s', (width, colours) => {
  test.each([
    ['sheets', sheets],
    ['labels', labels],
  ])('the %s are accessible and scroll nowhere sideways', async (_, path) => {
    const { context, page, faults } = await openPage(browser, server, { width, colours });
    await page.goto(server.url + path);
    expect(await axeCheck(page)).toEqual([]);
    expect(await overflow(page)).toEqual([]);
    expect(faults).toEqual([]);
    await context.close();
  });
});
