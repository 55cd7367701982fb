/** Weighing in, in the real browser: nothing that was entered is ever lost, and what comes out is what was typed. */
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync, zipSync } from 'fflate';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { seededRandom } from '../../src/statistics/seeded-random.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite, type View } from '../support/browser.ts';
import {
  growingId,
  growingLayout,
  growingPlants,
  growingYaml,
  writeGrowingContent,
} from '../support/growing-trial.ts';
import { overflow } from '../support/overflow.ts';
import { faintTexts } from '../support/page-contrast.ts';
import { builtSite } from '../support/site.ts';

let browser: Browser;
let server: StaticServer;
let dist: string;
let content: string;

beforeAll(async () => {
  content = await mkdtemp(join(tmpdir(), 'tankside-growing-'));
  await writeGrowingContent(content);
  ({ dist } = await builtSite(content));
  browser = await launchBrowser();
  server = await serveSite(dist);
});

afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(content, { recursive: true, force: true });
});

const phone = { width: 320, height: 568 } as const;
const day = '2025-10-20';

/** Opens the growing trial and begins its first cut. */
async function begun(view: View = phone) {
  const visit = await openPage(browser, server, view);
  await visit.page.goto(`${server.url}weigh/?trial=${growingId}`);
  await visit.page.locator('#set-date').fill(day);
  await visit.page.locator('#set-up-form button').click();
  await visit.page.locator('#weigh-next').waitFor();
  return visit;
}

const shown = async (page: Page) => ({
  where: await page.locator('#weigh-where').textContent(),
  typed: await page.locator('#weigh-fields .value').first().textContent(),
});

const whereOf = ({ container, row, column }: { container: string; row: number; column: number }) =>
  `${container} · row ${row} · column ${column}`;

async function view(page: Page, name: string): Promise<void> {
  await page.locator('#weigh-more').click();
  await page.locator(`#weigh-menu [data-view="${name}"]`).click();
}

async function enter(page: Page, digits: string): Promise<void> {
  await page.keyboard.type(digits);
  await page.keyboard.press('Enter');
}

/** The tables that the page gives out, by name. */
async function taken(page: Page, buttonId: string): Promise<Map<string, Buffer>> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.locator(`#${buttonId}`).click()]);
  return new Map([[download.suggestedFilename(), await readFile(await download.path())]]);
}

/** A page that is gone at once, as when a phone kills it: nothing in it gets to say good-bye. */
async function kill(page: Page): Promise<void> {
  const client = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  client.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
}

/** The page anew, without a network, as the device kept it. */
async function again(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${server.url}weigh/`);
  await page.locator('[data-go-on]').click();
  await page.locator('#weigh-next').waitFor();
  return page;
}

describe('On a phone on its side', () => {
  test.each([
    [844, 390],
    [568, 320],
  ])('every key is reached without scrolling, at %i x %i', async (width, height) => {
    const { context, page } = await begun({ width, height });
    const outside = async () => {
      const boxes = await page
        .locator(':is(#weigh-fields, #weigh-keys, #weigh-ask) button:visible, #weigh-more')
        .evaluateAll((all) => all.map((each) => [each.textContent, each.getBoundingClientRect()] as const));
      return boxes.flatMap(([key, { top, bottom, left, right }]) =>
        top < 0 || left < 0 || bottom > height || right > width ? [key] : [],
      );
    };
    expect(await outside()).toEqual([]);
    expect(await overflow(page)).toEqual([]);
    expect(await axeCheck(page)).toEqual([]);
    await enter(page, '9999');
    await page.locator('#weigh-change').waitFor();
    expect(await outside()).toEqual([]);
    await page.mouse.wheel(0, 2000);
    expect((await page.locator('#weigh-next').boundingBox())!.y).toBeGreaterThanOrEqual(0);
    await context.close();
  });
});

test("in colours of the reader's own, what stands in the field being typed has one ink", async () => {
  const { context, page } = await begun();
  await page.emulateMedia({ forcedColors: 'active' });
  const field = page.locator('#weigh-fields [aria-pressed="true"]');
  const inks = await field.evaluate((button) =>
    [button, ...button.querySelectorAll('*')].map((part) => getComputedStyle(part).color),
  );
  expect(inks.length).toBeGreaterThan(2);
  expect(new Set(inks).size).toBe(1);
  await context.close();
});

describe('A weigh-in of 96 plants without a network', () => {
  test(
    'loses nothing but the key being pressed, though the page is killed at ten moments',
    { timeout: 240_000 },
    async () => {
      const { integer } = seededRandom(4117);
      const visit = await begun();
      const { context, faults } = visit;
      let { page } = visit;
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
      await page.locator('#weigh-offline').waitFor({ state: 'attached' });
      await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
      await context.setOffline(true);
      // The keys of every plant: its digits, then Enter; a dead plant is one tap.
      const plants = growingPlants.map((plant, index) => ({ ...plant, isDead: index % 19 === 7 }));
      const keys = plants.flatMap(({ isDead, weight }, plant) =>
        (isDead ? ['dead'] : [...String(weight), 'Enter']).map((key) => ({ plant, key })),
      );
      // Ten times the page is killed, and three times more it is loaded anew in place.
      const deaths = new Map<number, 'killed' | 'reloaded'>();
      while (deaths.size < 13) {
        const moment = integer(keys.length - 2) + 1;
        if (!deaths.has(moment)) deaths.set(moment, deaths.size < 10 ? 'killed' : 'reloaded');
      }
      let kills = 0;
      for (let at = 0; at < keys.length; at += 1) {
        const { plant, key } = keys[at]!;
        if (key === 'dead') await page.locator('[data-status="dead"]').click();
        else await page.keyboard.press(key);
        const death = deaths.get(at);
        if (death === undefined) continue;
        deaths.delete(at);
        if (death === 'killed') {
          kills += 1;
          await kill(page);
          page = await again(context);
        } else {
          await page.reload();
          await page.locator('#weigh-next').waitFor();
        }
        const before = keys.slice(0, at).filter((each) => each.plant === plant && /^\d$/.test(each.key));
        const { where, typed } = await shown(page);
        const isLost = async (
          without: string,
          withIt: string,
          place: { isKept: boolean },
        ): Promise<boolean> => {
          if (place.isKept && typed === withIt) return false;
          expect([where, typed]).toEqual([whereOf(plants[plant]!), without]);
          return true;
        };
        const digits = before.map((each) => each.key).join('');
        const isDigit = /^\d$/.test(key);
        const next = plants[plant + 1];
        const isOn = where === whereOf(isDigit || next === undefined ? plants[plant]! : next);
        if (await isLost(digits || '–', isDigit ? digits + key : '–', { isKept: isOn })) {
          // The very key that was being pressed is pressed again.
          at -= 1;
        }
      }
      await page
        .locator('#finish-check')
        .filter({ hasText: /nothing to mend|asks/ })
        .waitFor();
      expect(kills).toBe(10);
      expect(await page.evaluate(() => navigator.onLine)).toBe(false);
      expect(await page.locator('#finish-open').textContent()).toBe('Every place is entered.');
      expect(await page.locator('#finish-problems li').allTextContents()).toEqual([]);
      const csv = (await taken(page, 'take-csv')).get('harvest.csv')!;
      expect(csv.toString()).toBe(
        [
          'container,row,column,date,plant,fresh_weight,status,remark',
          ...plants.map(({ container, row, column, weight, isDead }) =>
            [container, row, column, day, 1, isDead ? '' : weight, isDead ? 'dead' : '', ''].join(),
          ),
          '',
        ].join('\n'),
      );
      const finished = growingYaml
        .replace('status: growing', 'status: finished')
        .replace('2025-09-12}', `2025-09-12, cuts: [${day}]}`)
        .replace('version: 0.1.0', 'version: 1.0.0');
      const encode = (text: string) => new TextEncoder().encode(text);
      const files = new Map([
        [
          'trial.yaml',
          encode(`${finished}releases: [{version: 1.0.0, date: 2025-11-02, note: First release.}]\n`),
        ],
        ['layout.csv', encode(growingLayout)],
        ['harvest.csv', new Uint8Array(csv)],
      ]);
      const checked = checkTrial(growingId, files, { cultivars: null, today: '2025-12-01', prefix: '' });
      expect(checked.problems).toEqual([]);
      expect(checked.trial?.harvest).toHaveLength(96);
      expect(faults).toEqual([]);
      await context.close();
    },
  );
});

describe('A value that surprises', () => {
  test('is asked about once, at once, and keeps nobody from going on', async () => {
    const { context, page, faults } = await begun();
    const fives = growingPlants.filter(({ container }) => container === 'T1');
    for (const { weight } of fives) await enter(page, String(weight));
    const ask = page.locator('#weigh-ask');
    expect(await ask.isVisible()).toBe(false);
    await enter(page, '1450');
    expect(await page.locator('#weigh-question').textContent()).toMatch(
      /about 10 times more than its fellows/,
    );
    // Digits typed now are the right ones, and nothing else is asked.
    await enter(page, '145');
    expect((await shown(page)).where).toBe('T2 · row 1 · column 2');
    await enter(page, '1500');
    await page.locator('#weigh-keep').click();
    expect((await shown(page)).where).toBe('T2 · row 1 · column 3');
    // Once kept it is asked no more, not even when the place is entered again.
    await page.locator('#weigh-map button').nth(1).click();
    expect((await shown(page)).typed).toBe('1500');
    await page.keyboard.press('Enter');
    expect(await ask.isVisible()).toBe(false);
    expect((await shown(page)).where).toBe('T2 · row 1 · column 3');
    // While it asks, any other place can be gone to.
    await enter(page, '3');
    expect(await ask.isVisible()).toBe(true);
    await page.locator('#weigh-map button').nth(5).click();
    expect(await ask.isVisible()).toBe(false);
    expect(faults).toEqual([]);
    await context.close();
  });
});

describe('The page', () => {
  test('serves who has a keyboard alone', async () => {
    const { context, page } = await openPage(browser, server);
    await page.goto(`${server.url}weigh/`);
    await page.waitForSelector('#weigh[data-ready]');
    const tabTo = async (selector: string): Promise<void> => {
      for (let presses = 0; presses < 80; presses += 1) {
        await page.keyboard.press('Tab');
        if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector))
          return;
      }
      throw new Error(`no ${selector} within reach of Tab`);
    };
    await tabTo(`[data-trial="${growingId}"]`);
    await page.keyboard.press('Enter');
    await page.locator('#set-up-form').waitFor();
    await tabTo('#set-up-form button');
    await page.keyboard.press('Enter');
    await enter(page, '141');
    await enter(page, '152');
    expect((await shown(page)).where).toBe('T1 · row 1 · column 3');
    await tabTo('[data-status="culled"]');
    await page.keyboard.press('Enter');
    expect((await shown(page)).where).toBe('T1 · row 1 · column 4');
    await page.keyboard.press('ArrowLeft');
    expect(await page.locator('#weigh-note').textContent()).toContain('culled');
    await tabTo('#weigh-undo');
    await page.keyboard.press('Enter');
    expect((await shown(page)).where).toBe('T1 · row 1 · column 3');
    await page.keyboard.type('130');
    await tabTo('#weigh-next');
    await page.keyboard.press('Enter');
    expect((await shown(page)).where).toBe('T1 · row 1 · column 4');
    expect(await page.locator('#weigh-count').textContent()).toBe('3 of 96');
    await context.close();
  });

  test('takes a zip, keeps remarks, totals, second weights, readings and events, and gives the folder back', async () => {
    const { context, page, faults } = await openPage(browser, server, phone);
    await page.goto(`${server.url}weigh/`);
    const encode = (text: string) => new TextEncoder().encode(text);
    const folder = {
      [`${growingId}/trial.yaml`]: encode(growingYaml),
      [`${growingId}/layout.csv`]: encode(growingLayout),
      [`${growingId}/readings.csv`]: encode('date,container,ph\n2025-09-20,T1,6.0\n'),
    };
    const zip = { name: 'trial.zip', mimeType: 'application/zip', buffer: Buffer.from(zipSync(folder)) };
    await page.locator('#files').setInputFiles(zip);
    await page.locator('#set-date').fill(day);
    await page.locator('#set-order-back').check();
    await page.locator('#set-up-form button').click();
    await page.locator('[data-key="1"]').click();
    await page.locator('[data-key="4"]').click();
    await page.locator('[data-key="0"]').click();
    await page.locator('#weigh-remarks button', { hasText: 'tip burn' }).click();
    await page.locator('#weigh-other').click();
    await page.locator('#weigh-remark').fill('tip burn; leans, badly');
    await page.keyboard.press('Enter');
    await page.locator('#weigh-next').click();
    for (let index = 1; index < 24; index += 1) await enter(page, '141');
    await view(page, 'totals');
    await page.getByLabel('Total of T1, g').fill('3390');
    await page.keyboard.press('Tab');
    expect(await page.locator('#totals-list li').first().textContent()).toContain('Agrees: 7 g apart');
    await view(page, 'twice');
    const boxes = page.locator('#twice-list input');
    expect(await boxes.count()).toBe(6);
    for (const [index, weight] of ['142', '140', '141'].entries()) await boxes.nth(index).fill(weight);
    await page.keyboard.press('Tab');
    // Differences 1, -1, 0: standard deviation 1, divided by the root of 2.
    expect(await page.locator('#twice-said').textContent()).toContain(
      'repeatability standard deviation 0.707 g',
    );
    await view(page, 'notes');
    await page.locator('#reading-date').fill('2025-10-19');
    await page.locator('#reading-ph').fill('62');
    await page.locator('#reading-form button').click();
    expect(await page.locator('#reading-said').textContent()).toContain('outside 3 to 10');
    await page.locator('#reading-ph').fill('6.2');
    await page.locator('#reading-form button').click();
    await page.locator('#event-date').fill(day);
    await page.locator('#event-where').fill('T1 1 2');
    await page.locator('#event-what').fill('eaten: one leaf');
    await page.locator('#event-form button').click();
    await view(page, 'finish');
    await page.locator('#finish-left').click();
    await page.locator('#finish-open', { hasText: 'Every place' }).waitFor();
    await page.locator('#edit-cuts-choice').waitFor();
    const given = (await taken(page, 'take-zip')).get(`${growingId}.zip`)!;
    const files = Object.fromEntries(
      Object.entries(unzipSync(new Uint8Array(given))).map(([name, bytes]) => [
        name.replace(`${growingId}/`, ''),
        new TextDecoder().decode(bytes),
      ]),
    );
    expect(Object.keys(files).sort()).toEqual(['harvest.csv', 'layout.csv', 'readings.csv', 'trial.yaml']);
    expect(files['layout.csv']).toBe(growingLayout);
    expect(files['readings.csv']).toBe('date,container,ph\n2025-09-20,T1,6.0\n2025-10-19,T1,6.2\n');
    expect(files['trial.yaml']).toBe(
      `${growingYaml
        .replace('2025-09-12}', `2025-09-12, cuts: [${day}]}`)
        .replace('block: "1"}', 'block: "1", weighed_total: {value: 3390, unit: g}}')}events:\n` +
        `  - {date: ${day}, where: T1 1 2, what: "eaten: one leaf"}\n`,
    );
    const rows = files['harvest.csv']!.split('\n');
    expect(rows[1]).toBe(`T1,1,1,${day},1,140,,"tip burn; leans, badly"`);
    expect(rows[96]).toMatch(/^T4,.*,not weighed,$/);
    // There and back: row 2 of T1 is walked, and written, from its end.
    expect(rows[7]).toMatch(/^T1,2,6,/);
    expect(faults).toEqual([]);
    await context.close();
  });

  test('leads through every variable of a plant, and through a second cut past what died at the first', async () => {
    const { context, page, faults } = await openPage(browser, server, phone);
    await page.goto(`${server.url}weigh/`);
    const more = [
      '  - {id: leaves, name: Leaves, of: plant, kind: counted, lowest: 1, highest: 40}',
      '  - {id: taste, name: Taste, of: plant, kind: scored, resolution: 0.5, lowest: 1, highest: 9}',
      '',
    ];
    const encode = (text: string) => new TextEncoder().encode(text);
    const folder = {
      'trial.yaml': encode(growingYaml + more.join('\n')),
      'layout.csv': encode('container,row,column,kind\nT1,1,1,wren\nT1,1,2,egret\nT1,1,3,plover\n'),
    };
    const buffer = Buffer.from(zipSync(folder));
    await page.locator('#files').setInputFiles({ name: 'three.zip', mimeType: 'application/zip', buffer });
    await page.locator('#set-date').fill(day);
    await page.locator('#set-up-form button').click();
    const next = page.locator('#weigh-next');
    await page.keyboard.type('141');
    expect(await next.textContent()).toBe('Next: Leaves');
    await page.keyboard.press('Enter');
    await enter(page, '12');
    await page.keyboard.type('7.5');
    await page.keyboard.press('Enter');
    expect((await shown(page)).where).toBe('T1 · row 1 · column 2');
    await page.locator('[data-status="dead"]').click();
    // A count out of its range is asked about as a weight is.
    await enter(page, '150');
    await enter(page, '90');
    expect(await page.locator('#weigh-question').textContent()).toContain('above the highest');
    await enter(page, '9');
    await page.keyboard.press('Enter');
    await page.locator('#finish-open', { hasText: 'Every place' }).waitFor();
    await view(page, 'set-up');
    await page.locator('#set-cut').fill('2');
    await page.locator('#set-date').fill('2025-11-10');
    await page.locator('#set-up-form button').click();
    expect(await page.locator('#weigh-count').textContent()).toBe('1 of 3');
    await page.locator('[data-status="no regrowth"]').click();
    expect((await shown(page)).where).toBe('T1 · row 1 · column 3');
    await page.locator('[data-status="not weighed"]').click();
    await page.locator('#finish-open', { hasText: 'Every place' }).waitFor();
    const csv = (await taken(page, 'take-csv')).get('harvest.csv')!.toString();
    expect(csv.split('\n')).toEqual([
      'container,row,column,cut,date,plant,fresh_weight,leaves,taste,status,remark',
      `T1,1,1,1,${day},1,141,12,7.5,,`,
      `T1,1,2,1,${day},1,,,,dead,`,
      `T1,1,3,1,${day},1,150,9,,,`,
      'T1,1,1,2,2025-11-10,1,,,,no regrowth,',
      'T1,1,2,2,,1,,,,dead,',
      'T1,1,3,2,2025-11-10,1,,,,not weighed,',
      '',
    ]);
    expect(faults).toEqual([]);
    await context.close();
  });

  test('takes marks, yes or no, growth stages and several judges, each as what it is, with its meaning', async () => {
    const { context, page, faults } = await openPage(browser, server, phone);
    await page.goto(`${server.url}weigh/`);
    const more = [
      '  - {id: tip_burn, name: Tip burn, of: plant, kind: scored, marks: {"0": none, "1": a leaf or two, "2": all leaves}}',
      '  - {id: stage, name: Growth stage, of: plant, kind: scored, scale: BBCH}',
      '  - {id: bolted, name: Bolted, of: plant, kind: scored, scale: yes or no}',
      '  - {id: taste_a, name: Taste, of: plant, kind: scored, lowest: 1, highest: 9, panel: Taste, judge: A, blind: true}',
      '  - {id: taste_b, name: Taste, of: plant, kind: scored, lowest: 1, highest: 9, panel: Taste, judge: B}',
      '  - {id: bolting, name: Days to first bolting, of: plant, kind: counted, unit: d, lowest: 10, highest: 200}',
      '',
    ];
    const encode = (text: string) => new TextEncoder().encode(text);
    const folder = {
      'trial.yaml': encode(growingYaml + more.join('\n')),
      'layout.csv': encode('container,row,column,kind\nT1,1,1,wren\nT1,1,2,egret\nT1,1,3,plover\n'),
    };
    const buffer = Buffer.from(zipSync(folder));
    await page.locator('#files').setInputFiles({ name: 'marks.zip', mimeType: 'application/zip', buffer });
    await page.locator('#set-date').fill(day);
    await page.locator('#set-up-form button').click();
    const [next, meaning, note] = ['#weigh-next', '#weigh-meaning', '#weigh-note'].map((id) =>
      page.locator(id),
    );
    const mark = (value: string) => page.locator(`#weigh-marks [data-mark="${value}"]`);
    const keyTop = async () => (await page.locator('[data-key="1"]').boundingBox())!.y;
    expect(await page.locator('#weigh-fields .name').allTextContents()).toEqual([
      'Fresh weight',
      'Tip burn',
      'Growth stage',
      'Bolted',
      'Taste · A',
      'Taste · B',
      'Days to first bolting',
    ]);
    const top = await keyTop();
    await enter(page, '141');
    // A mark is one tap, and leads on.
    expect(await page.locator('#weigh-marks button').allTextContents()).toEqual([
      '0 none',
      '1 a leaf or two',
      '2 all leaves',
    ]);
    expect(await page.locator('[data-status="dead"]').isVisible()).toBe(false);
    expect(await keyTop()).toBeCloseTo(top, 0);
    expect(await overflow(page)).toEqual([]);
    expect(await axeCheck(page)).toEqual([]);
    expect(await faintTexts(page, 7)).toEqual([]);
    await mark('1').click();
    await page.keyboard.type('51');
    expect(await meaning!.textContent()).toBe('inflorescence emergence: the main shoot begins to elongate');
    expect(await keyTop()).toBeCloseTo(top, 0);
    await page.keyboard.press('Enter');
    await mark('0').click();
    await enter(page, '7');
    await enter(page, '8');
    await enter(page, '45');
    expect((await shown(page)).where).toBe('T1 · row 1 · column 2');
    // A mark that there is not is led back to, however it came about; nothing can keep it.
    await enter(page, '150');
    await page.keyboard.type('7');
    await next!.click();
    expect(await note!.textContent()).toBe('Tip burn: 7 is none of its marks, which are 0, 1, 2.');
    await enter(page, '2');
    await enter(page, '123');
    expect(await note!.textContent()).toContain('123 is no BBCH code, which go from 0 to 99');
    await enter(page, '49');
    await enter(page, '1');
    for (const value of ['6', '5', '60']) await enter(page, value);
    await page.locator('[data-status="dead"]').click();
    await page.locator('#finish-open', { hasText: 'Every place' }).waitFor();
    const csv = (await taken(page, 'take-csv')).get('harvest.csv')!.toString();
    expect(csv.split('\n')).toEqual([
      'container,row,column,date,plant,fresh_weight,tip_burn,stage,bolted,taste_a,taste_b,bolting,status,remark',
      `T1,1,1,${day},1,141,1,51,0,7,8,45,,`,
      `T1,1,2,${day},1,150,2,49,1,6,5,60,,`,
      `T1,1,3,${day},1,,,,,,,,dead,`,
      '',
    ]);
    expect(faults).toEqual([]);
    await context.close();
  });

  test('takes at most three taps a plant beyond its digits, whatever became of it', async () => {
    const { context, page } = await begun();
    let taps = 0;
    await page.exposeFunction('tapped', () => (taps += 1));
    await page.evaluate(() => {
      document.addEventListener('click', () => {
        void (window as unknown as { tapped: () => Promise<number> }).tapped();
      });
    });
    const tap = async (selector: string) => page.locator(selector).first().click();
    const digits = async (text: string) => {
      for (const digit of text) await tap(`[data-key="${digit}"]`);
    };
    const plants: [name: string, digits: string, work: () => Promise<void>, most: number][] = [
      ['weighed', '141', () => tap('#weigh-next'), 1],
      [
        'weighed, with a remark',
        '152',
        async () => {
          await tap('#weigh-remarks button:not(#weigh-other)');
          await tap('#weigh-next');
        },
        2,
      ],
      ['dead', '', () => tap('[data-status="dead"]'), 1],
      [
        'dead, with a remark',
        '',
        async () => {
          await tap('#weigh-remarks button:not(#weigh-other)');
          await tap('[data-status="dead"]');
        },
        2,
      ],
      [
        'weighed, far off, and kept',
        '9999',
        async () => {
          await tap('#weigh-next');
          await tap('#weigh-keep');
        },
        2,
      ],
    ];
    for (const [index, [name, typed, work, most]] of plants.entries()) {
      const before = taps;
      await digits(typed);
      await work();
      await page.locator('#weigh-count', { hasText: `${String(index + 1)} of 96` }).waitFor();
      await expect.poll(() => [name, taps - before - typed.length]).toEqual([name, most]);
      expect(most).toBeLessThanOrEqual(3);
    }
    await context.close();
  });

  test('goes on together in two windows', async () => {
    const { context, page } = await begun();
    await enter(page, '141');
    const other = await context.newPage();
    await other.goto(page.url());
    await other.locator('#weigh-next').waitFor();
    await enter(other, '152');
    await page.locator('#weigh-where', { hasText: 'column 3' }).waitFor();
    await enter(page, '133');
    await other.locator('#weigh-count', { hasText: '3 of 96' }).waitFor();
    expect(await page.locator('#weigh-fault').isVisible()).toBe(false);
    await context.close();
  });

  test('is kept with what it is made of, and nothing else of the site', async () => {
    const { context, page } = await begun();
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const kept = await page.evaluate(async () => {
      const names = await caches.keys();
      const requests = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return { names, paths: requests.flat().map(({ url }) => new URL(url).pathname) };
    });
    expect(kept.names).toHaveLength(1);
    expect(kept.names[0]).toMatch(/^tankside-weigh \/garden\/weigh\/ [0-9a-f]{16}$/);
    const ours = /^\/garden\/(weigh\/(app\.webmanifest|winter-lettuce-2025\.json)?|assets\/[^/]+|icon\.svg)$/;
    expect(kept.paths.filter((path) => !ours.test(path))).toEqual([]);
    expect(kept.paths).toContain('/garden/weigh/');
    await context.setOffline(true);
    await expect(page.goto(`${server.url}trials/`)).rejects.toThrow(/ERR_INTERNET_DISCONNECTED/);
    await context.close();
  });

  test('is kept anew when the site changes, and the old one let go of', async () => {
    const changed = await mkdtemp(join(tmpdir(), 'tankside-changed-'));
    await cp(dist, changed, { recursive: true });
    const own = await serveSite(changed);
    const { context, page } = await openPage(browser, own);
    await page.goto(`${own.url}weigh/`);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const [html, worker] = [join(changed, 'weigh', 'index.html'), join(changed, 'weigh', 'offline.js')];
    await writeFile(html, (await readFile(html, 'utf8')).replace('</h1>', ', changed</h1>'));
    const version = '0123456789abcdef';
    await writeFile(worker, (await readFile(worker, 'utf8')).replace(/(?<=ours \+ ")[0-9a-f]{16}/, version));
    // With a network the page is the site's own at once, whatever is kept.
    await page.reload();
    expect(await page.locator('h1').textContent()).toBe('Weighing in, changed');
    const isWaiting = () => navigator.serviceWorker.ready.then(({ waiting }) => waiting !== null);
    await expect.poll(() => page.evaluate(isWaiting), { timeout: 20_000 }).toBe(true);
    await page.close();
    const next = await context.newPage();
    await next.goto(`${own.url}weigh/`);
    const names = () => next.evaluate(() => caches.keys());
    await expect.poll(names, { timeout: 20_000 }).toEqual([`tankside-weigh /garden/weigh/ ${version}`]);
    await context.setOffline(true);
    await next.reload();
    expect(await next.locator('h1').textContent()).toBe('Weighing in, changed');
    await context.close();
    await own.close();
    await rm(changed, { recursive: true, force: true });
  });

  test('says so when the device keeps an entry no more', async () => {
    const { context, page } = await begun();
    await page.evaluate(() => {
      IDBObjectStore.prototype.add = () => {
        throw new DOMException('the disk is full', 'QuotaExceededError');
      };
    });
    await enter(page, '141');
    await page.locator('#weigh-fault', { hasText: 'the disk is full' }).waitFor();
    expect(await page.locator('#weigh-fault').getAttribute('role')).toBe('alert');
    expect((await shown(page)).where).toBe('T1 · row 1 · column 2');
    await context.close();
  });

  test('can be installed, and the browser finds nothing that it lacks', async () => {
    const manifest = JSON.parse(await readFile(join(dist, 'weigh', 'app.webmanifest'), 'utf8')) as {
      icons: { src: string; sizes: string; purpose: string }[];
    };
    expect(manifest).toMatchObject({ start_url: './', scope: './', display: 'standalone' });
    for (const { src, sizes } of manifest.icons.filter((icon) => icon.sizes !== 'any')) {
      const { width, height, format } = await sharp(join(dist, 'weigh', src)).metadata();
      expect([`${width}x${height}`, format]).toEqual([sizes, 'png']);
    }
    const { context, page } = await begun();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const client = await context.newCDPSession(page);
    const { installabilityErrors } = await client.send('Page.getInstallabilityErrors');
    // Each test has a profile of its own that leaves nothing behind, where nothing can be installed.
    expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual(['in-incognito']);
    const told = (await client.send('Page.getAppManifest')) as unknown as {
      errors: unknown[];
      manifest: { id: string; startUrl: string; scope: string };
    };
    expect(told.errors).toEqual([]);
    const own = `${server.url}weigh/`;
    // An id of the host's root would be another site's on the same host too.
    expect(told.manifest).toMatchObject({ id: own, startUrl: own, scope: own });
    await context.close();
  });

  test('hands the tables to the share sheet of a device that takes files, and offers none elsewhere', async () => {
    const { context, page } = await begun();
    await enter(page, '141');
    await view(page, 'finish');
    await page.waitForFunction(() => document.querySelector('#finish-check')?.textContent !== 'Checking …');
    expect(await page.locator('#take-share').isVisible()).toBe(false);
    await page.evaluate(() => {
      const shared: { name: string; text: Promise<string> }[] = [];
      Object.assign(window, { shared });
      Object.assign(navigator, {
        canShare: () => true,
        share: ({ files }: { files: File[] }) => {
          shared.push(...files.map((file) => ({ name: file.name, text: file.text() })));
          return Promise.resolve();
        },
      });
    });
    await view(page, 'notes');
    await page.locator('#reading-ph').fill('6.2');
    await page.locator('#reading-form button').click();
    await view(page, 'finish');
    await page.locator('#take-share').click();
    await page.waitForFunction(() => (window as unknown as { shared: unknown[] }).shared.length > 0);
    const shared = await page.evaluate(() => {
      const all = (window as unknown as { shared: { name: string; text: Promise<string> }[] }).shared;
      return Promise.all(all.map(async ({ name, text }): Promise<[string, string]> => [name, await text]));
    });
    const files = new Map(shared);
    expect([...files.keys()]).toEqual(['harvest.csv', 'readings.csv']);
    expect(files.get('harvest.csv')).toContain(`T1,1,1,${day},1,141,,`);
    expect(files.get('readings.csv')).toMatch(/^date,container,ph\n\S+,T1,6\.2\n$/);
    await context.close();
  });

  test('says without JavaScript that it needs it, and leads to paper', async () => {
    const { context, page } = await openPage(browser, server, { javaScript: false });
    await page.goto(`${server.url}weigh/`);
    expect(await page.locator('noscript').textContent()).toContain('On paper it works too');
    expect(await page.locator('noscript a').getAttribute('href')).toBe(
      `/garden/trials/${growingId}/weighing-sheet/`,
    );
    expect(await page.locator('#view-weighing').isVisible()).toBe(false);
    await context.close();
  });
});

describe.each([320, 1280])('At %i px', (width) => {
  test.each(['light', 'dark'] as const)(
    'every view is sound, its texts at 7:1, in %s',
    { timeout: 120_000 },
    async (colours) => {
      const { context, page } = await begun({ width, height: width === 320 ? 568 : 900, colours });
      const look = async (name: string): Promise<string[]> => [
        ...(await axeCheck(page)).map((fault) => `${name}: ${fault}`),
        ...(await faintTexts(page, 7)).map((fault) => `${name}: ${fault}`),
        ...(await overflow(page)).map((fault) => `${name}: ${fault}`),
        ...(await smallTargets(page)).map((fault) => `${name}: ${fault}`),
      ];
      const faults = await look('weighing');
      for (const weight of ['140', '150', '145', '1']) await enter(page, weight);
      faults.push(...(await look('asking')));
      for (const name of ['totals', 'twice', 'notes', 'finish', 'set-up']) {
        await view(page, name);
        await page.waitForFunction(
          () => document.querySelector('#finish-check')?.textContent !== 'Checking …',
        );
        faults.push(...(await look(name)));
      }
      await page.goto(`${server.url}weigh/`);
      await page.waitForSelector('#weigh[data-ready]');
      faults.push(...(await look('start')));
      expect(faults).toEqual([]);
      await context.close();
    },
  );
});

/** Buttons of the page itself that a wet finger would miss: under 48 px either way. */
function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('.weigh :is(button, a.open-trial, select, input[type="text"])')].flatMap(
      (target) => {
        const { width, height } = target.getBoundingClientRect();
        const isShown = width > 0 && height > 0;
        return isShown && Math.min(width, height) < 47.9
          ? [`${target.id || target.textContent}: ${width} x ${height} px`]
          : [];
      },
    ),
  );
}
