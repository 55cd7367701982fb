import { readFileSync } from 'node:fs';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { printReport } from '../../src/check/print-problem.ts';
import { root } from '../../src/commands/folders.ts';
import { loadTrial } from '../../src/commands/load-content.ts';
import type { StaticServer } from '../../src/commands/static-server.ts';
import type { Problem } from '../../src/model/problem.ts';
import { readTrialFolder } from '../../src/read/folder.ts';
import { goodFiles } from '../check/good-folder.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite, type Visit } from '../support/browser.ts';
import { changedZip } from '../support/changed-zip.ts';
import { overflow } from '../support/overflow.ts';
import { builtSite } from '../support/site.ts';

const broken = join(root, 'test', 'broken');
/** The day that the broken folders' expected lines were written for. */
const today = new Date('2026-01-15T12:00:00');

let browser: Browser;
let server: StaticServer;
let scratch: string;

beforeAll(async () => {
  const { dist } = await builtSite();
  browser = await launchBrowser();
  server = await serveSite(dist);
  scratch = await mkdtemp(join(tmpdir(), 'tankside-check-page-'));
});

afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(scratch, { recursive: true });
});

async function open(view: Parameters<typeof openPage>[2] = {}, day: Date | null = today): Promise<Visit> {
  const visit = await openPage(browser, server, view);
  if (day !== null) await visit.page.clock.setFixedTime(day);
  await visit.page.goto(`${server.url}check/`);
  return visit;
}

/** Gives files to the page and waits for its answer. */
async function give(page: Page, input: 'folder' | 'files', paths: string | string[]): Promise<void> {
  await page.setInputFiles(`#drop [name="${input}"]`, paths);
  await answered(page);
}

async function answered(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const told = document.querySelector('#told')?.textContent ?? '';
    return told !== '' && !told.startsWith('Checking');
  });
}

/** What a reader keeps of the list. */
async function kept(page: Page, button: 'text' | 'JSON'): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.click(button === 'text' ? '#keep-text' : '#keep-json'),
  ]);
  return readFile(await download.path(), 'utf8');
}

async function shownMessages(page: Page): Promise<string[]> {
  return page.locator('.problem .message').allTextContents();
}

/** The broken folders of one trial whose faults show without the cultivars of a content folder. */
async function brokenTrials(): Promise<{ name: string; problems: readonly Problem[] }[]> {
  const found: { name: string; problems: readonly Problem[] }[] = [];
  vi.stubEnv('TANKSIDE_TODAY', '2026-01-15');
  for (const name of (await readdir(broken)).sort()) {
    const path = join(broken, name);
    const files = await readTrialFolder(path);
    if ([...files.keys()].some((file) => /^(trials|fact-sheets)\//.test(file))) continue;
    const { problems } = await loadTrial(path);
    const expected = await readFile(join(path, 'expected.txt'), 'utf8').catch(() => null);
    if (expected === null) continue;
    if (printReport(problems).startsWith(expected)) found.push({ name, problems });
  }
  vi.unstubAllEnvs();
  return found;
}

describe('a folder given to the page', () => {
  test(
    'shows the very problems that the command prints, for a broken folder of each rule',
    { timeout: 300_000 },
    async () => {
      const { context, page, faults } = await open();
      const firsts = new Map(
        (await brokenTrials()).reverse().map((each) => [each.name.split('--')[0], each]),
      );
      const folders = [...firsts.values()];
      expect(folders.length).toBeGreaterThan(80);
      const unlike: string[] = [];
      for (const [index, { name }] of folders.entries()) {
        // Chromium lets a page hand out ten files in a row, and asks before the next.
        if (index % 8 === 7) await page.reload();
        await give(page, 'folder', join(broken, name));
        const expected = readFileSync(join(broken, name, 'expected.txt'), 'utf8');
        const lines = (await kept(page, 'text')).split('\n');
        if (lines.slice(0, -2).join('\n') !== expected.trimEnd())
          unlike.push(`${name}:\n${lines.join('\n')}`);
      }
      expect(unlike).toEqual([]);
      expect(faults).toEqual([]);
      await context.close();
    },
  );

  test('shows each message with its line and what to write, and lets all be kept as text and JSON', async () => {
    const { context, page } = await open();
    const [{ problems } = { problems: [] }] = (await brokenTrials()).filter(
      ({ name }) => name === 'weight-not-a-number--letter',
    );
    await give(page, 'folder', join(broken, 'weight-not-a-number--letter'));
    expect(await shownMessages(page)).toEqual(problems.map(({ message }) => message));
    expect(await page.textContent('.problem mark')).toBe('12O');
    expect(await page.textContent('.problem-place')).toBe('Error line 4, column 8');
    expect(await kept(page, 'text')).toBe(printReport(problems));
    expect(JSON.parse(await kept(page, 'JSON'))).toEqual(problems);
    expect(await page.textContent('#told')).toBe(
      'To be mended: weight-not-a-number--letter (1 error, 0 warnings, 0 notes).',
    );
    await context.close();
  });

  test('is checked the same when it is dropped as a folder, as the system drops it', async () => {
    const { context, page } = await open();
    const session = await context.newCDPSession(page);
    const data = { items: [], files: [join(broken, 'photo-file--other-kind')], dragOperationsMask: 1 };
    for (const type of ['dragEnter', 'dragOver', 'drop'] as const) {
      await session.send('Input.dispatchDragEvent', { type, x: 300, y: 300, data });
    }
    await answered(page);
    expect(await page.textContent('#result-heading')).toBe(
      'To be mended: photo-file--other-kind (1 error, 0 warnings, 0 notes)',
    );
    await context.close();
  });

  test('that is good says so, and what would be published of it', async () => {
    // The example is a trial of this site, and no harvest of it lies in a future that is past.
    const { context, page, faults } = await open({}, null);
    await page.click('#try-example');
    await answered(page);
    expect(await page.textContent('#result-heading')).toMatch(/^Nothing to mend: [a-z0-9-]+$/);
    expect(await page.textContent('.would-publish .finding')).toMatch(/\S{3,}.*\.$/s);
    expect(await page.isHidden('#keep')).toBe(true);
    expect(faults).toEqual([]);
    await context.close();
  });
});

describe('a zip given to the page', () => {
  test('is checked as the folder that it holds', async () => {
    const { context, page, faults } = await open();
    const folder = join(broken, 'frozen-version-altered');
    const zip = join(scratch, 'download.zip');
    const files = [...(await readTrialFolder(folder))].filter(([path]) => path !== 'expected.txt');
    await writeFile(
      zip,
      zipSync(Object.fromEntries(files.map(([path, bytes]) => [`${basename(folder)}/${path}`, bytes]))),
    );
    await give(page, 'files', zip);
    const lines = (await kept(page, 'text')).split('\n');
    expect(lines.slice(0, -2).join('\n')).toBe(
      (await readFile(join(folder, 'expected.txt'), 'utf8')).trimEnd(),
    );
    expect(faults).toEqual([]);
    await context.close();
  });

  test('that was made to burst, to climb or to deceive is told of, and the page lives on', async () => {
    const { context, page, faults } = await open();
    const good = Object.fromEntries([...goodFiles()].map(([path, text]) => [path, strToU8(text)]));
    const swelling = changedZip(zipSync({ 'a-trial.bin': new Uint8Array(60 * 1024 * 1024), ...good }), {
      size: 9,
    });
    const hostile: Record<string, [Uint8Array, string]> = {
      'bomb.zip': [swelling, '"a-trial.bin" is damaged'],
      'huge.zip': [changedZip(zipSync(good), { size: 0xfffffffe }), '"trial.yaml" is too large'],
      'climb.zip': [
        zipSync({ ...good, '../../up.csv': strToU8('x') }),
        '"../../up.csv" is outside the archive',
      ],
      'none.zip': [strToU8('PK, but no archive'), '"none.zip" is no zip archive'],
      'cut.zip': [zipSync(good).subarray(0, 300), '"cut.zip" is no zip archive'],
    };
    for (const [name, [bytes, message]] of Object.entries(hostile)) {
      await writeFile(join(scratch, name), bytes);
      await give(page, 'files', join(scratch, name));
      const messages = await shownMessages(page);
      expect(
        messages.filter((each) => each.startsWith(message)),
        name,
      ).toHaveLength(1);
    }
    await give(page, 'folder', join(root, 'content', 'trials', 'four-lettuces-2024'));
    expect(await page.textContent('#result-heading')).toMatch(/four-lettuces-2024/);
    expect(faults).toEqual([]);
    await context.close();
  });
});

describe('the page of checks', () => {
  test('works by keyboard alone: a button opens the choice of files, and the result takes the focus', async () => {
    const { context, page } = await open();
    const asked = page.waitForEvent('filechooser');
    for (let step = 0; step < 40; step += 1) {
      await page.keyboard.press('Tab');
      if (await page.evaluate(() => document.activeElement?.getAttribute('data-choose') === 'files')) break;
    }
    await page.keyboard.press('Enter');
    const chooser = await asked;
    const names = ['trial.yaml', 'layout.csv', 'harvest.csv'];
    await chooser.setFiles(names.map((name) => join(broken, 'weight-not-a-number--letter', name)));
    await answered(page);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('result-heading');
    expect(await shownMessages(page)).toEqual(['"12O" is not a number; write digits only, such as 120']);
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('keep-text');
    await context.close();
  });

  test('asks nothing of any host once it has its own check, and may speak to no other', async () => {
    const { context, page } = await open();
    const policy = await page.getAttribute('meta[http-equiv="Content-Security-Policy"]', 'content');
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("connect-src 'self'");
    expect(policy).toContain("form-action 'self'");
    await give(page, 'folder', join(broken, 'yaml-tab'));
    const requests: string[] = [];
    page.on('request', (request) => requests.push(`${request.method()} ${request.url()}`));
    await give(page, 'folder', join(broken, 'yaml-tab'));
    expect(requests.filter((each) => !each.includes('/assets/check-worker'))).toEqual([]);
    await context.close();
  });

  test('loads the check only when there is something to check', async () => {
    const visit = await openPage(browser, server);
    const scripts: { url: string; bytes: number }[] = [];
    visit.page.on('response', (response) => {
      if (/\.js$/.test(response.url())) {
        void response.body().then((body) => scripts.push({ url: response.url(), bytes: body.length }));
      }
    });
    await visit.page.goto(`${server.url}check/`, { waitUntil: 'networkidle' });
    expect(scripts.length).toBeGreaterThan(0);
    expect(scripts.filter(({ url }) => url.includes('worker'))).toEqual([]);
    expect(scripts.reduce((sum, { bytes }) => sum + bytes, 0)).toBeLessThan(30_000);
    await visit.context.close();
  });

  test('passes axe with problems shown, light and dark, at 1280 and 320 px, and never scrolls sideways', async () => {
    for (const width of [1280, 320]) {
      const { context, page } = await open({ width });
      for (const name of [
        'weight-not-a-number--letter',
        'wrong-delimiter',
        'copied-weights',
        'yaml-syntax--colon',
      ]) {
        await give(page, 'folder', join(broken, name));
        await page
          .locator('.problem details')
          .first()
          .evaluate((details) => details.setAttribute('open', ''));
        for (const colorScheme of ['light', 'dark'] as const) {
          await page.emulateMedia({ colorScheme });
          expect(await axeCheck(page), `${name} ${width} ${colorScheme}`).toEqual([]);
        }
        expect(await overflow(page), `${name} ${width}`).toEqual([]);
      }
      await context.close();
    }
  });

  test('without JavaScript says what to do instead, and leads to the list of checks', async () => {
    const { context, page } = await openPage(browser, server, { javaScript: false });
    await page.goto(`${server.url}check/`);
    expect(await page.innerText('main')).toContain('npm run -s tankside -- check <trial folder>');
    expect(await page.isVisible('#drop')).toBe(false);
    expect(await page.locator('main a[href$="/data/checks/"]').count()).toBeGreaterThan(0);
    await context.close();
  });
});
