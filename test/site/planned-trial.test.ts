/** The page of a trial that is planned, and of one that was: in the real browser. */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { StaticServer } from '../../src/commands/static-server.ts';
import { proposals } from '../../src/plan/proposals.ts';
import { containers, levels, planOf } from '../plan/request.ts';
import { axeCheck } from '../support/axe.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { writeGrowingContent } from '../support/growing-trial.ts';
import { overflow } from '../support/overflow.ts';
import { builtSite } from '../support/site.ts';

let browser: Browser;
let server: StaticServer;
let content: string;

const request = planOf({
  factors: [{ id: 'feed', name: 'Feed', levels: levels('one', 'two', 'three'), check: 'one' }],
  containers: containers(4, 2, 3),
  season: { year: 2026, name: 'spring' },
});
const context = { cultivars: null, others: [], today: '2026-03-01', variation: 12 };
const [plan] = proposals(request, 8812, context).proposals;

async function put(id: string, files: Iterable<readonly [string, string]>): Promise<void> {
  for (const [name, text] of files) {
    const path = join(content, 'trials', id, name);
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, text);
  }
}

/** Weighed, and with a hole fewer in T4 than was planned. */
function otherwise(): Map<string, string> {
  const weights = [140, 155, 128, 133, 149, 160, 151];
  const cut = (text: string) => text.replace(/^T4,2,3,.*\n/m, '');
  const yaml = plan!.files
    .get('trial.yaml')!
    .replace('status: planned', 'status: finished')
    .replace('version: "0.1.0"', 'version: "1.0.0"')
    .replace(/, lot: \{[^}]*\}/, '')
    .replace(
      'note: "The plan."}',
      'note: "The plan."}\n  - {version: "1.0.0", date: "2026-06-01", note: First}',
    );
  let row = 0;
  const harvest = cut(plan!.files.get('harvest.csv')!).replace(
    /,,,$/gm,
    () => `,${String(weights[(row += 1) % 7])},,`,
  );
  return new Map([
    ...plan!.files,
    ['trial.yaml', `${yaml}dates: {sown: 2026-03-05, cuts: [2026-05-20]}\n`],
    ['layout.csv', cut(plan!.files.get('layout.csv')!)],
    ['harvest.csv', harvest],
  ]);
}

beforeAll(async () => {
  content = await mkdtemp(join(tmpdir(), 'tankside-planned-'));
  await writeGrowingContent(content);
  await put('planned-2026', plan!.files);
  await put('done-2026', otherwise());
  browser = await launchBrowser();
  server = await serveSite((await builtSite(content)).dist);
});

afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(content, { recursive: true, force: true });
});

describe('The page of a planned trial', () => {
  test('shows question, day, planned analysis and layout map', async () => {
    const { context: visit, page } = await openPage(browser, server, { javaScript: false });
    await page.goto(`${server.url}trials/planned-2026/`);
    const text = (await page.textContent('main'))!.replaceAll(/\s+/g, ' ');
    expect(text).toContain('Which of these does best here?');
    expect(text).toContain('Planned on 1 March 2026, as version 0.1.0');
    expect(text).toContain('fresh weight per plant set = block + feed, with error between positions');
    expect(text).toMatch(/On 18 error degrees of freedom, a difference of \d+% of the mean/);
    expect(text).toContain('The seed of the lot: 8812.');
    expect(text).toContain('plan version 0.1.0');
    expect(text).not.toContain('data version');
    expect(await page.textContent('footer')).toContain('version 0.1.0 of the plan');
    expect(await page.locator('section:has(#plan) svg').count()).toBe(4);
    await visit.close();
  });

  test.each([
    [1280, 'light'],
    [320, 'dark'],
  ] as const)('is accessible and scrolls nowhere sideways, at %i px, %s', async (width, colours) => {
    const { context: visit, page, faults } = await openPage(browser, server, { width, colours });
    await page.goto(`${server.url}trials/planned-2026/`);
    expect(await axeCheck(page)).toEqual([]);
    expect(await overflow(page)).toEqual([]);
    expect(faults).toEqual([]);
    await visit.close();
  });
});

test('no line of the way to a page begins with the stroke between its steps', async () => {
  const { context: visit, page } = await openPage(browser, server, { width: 320 });
  await page.goto(`${server.url}trials/planned-2026/weighing-sheet/`);
  const steps = await page.locator('.breadcrumbs li').evaluateAll((all) =>
    all.map((step) => ({
      left: step.getBoundingClientRect().left,
      before: getComputedStyle(step, '::before').content,
    })),
  );
  expect(steps.filter(({ left }) => left === steps[0]!.left).length).toBeGreaterThan(1);
  expect(steps.map(({ before }) => before)).toEqual(steps.map(() => 'none'));
  await visit.close();
});

test('the page of the finished trial says what was planned and what was done otherwise', async () => {
  const { context: visit, page } = await openPage(browser, server, { javaScript: false });
  await page.goto(`${server.url}trials/done-2026/`);
  expect(await page.locator('#plan-kept').textContent()).toBe('What was planned');
  const section = page.locator('section:has(#plan-kept)');
  expect(await section.textContent()).toContain(
    'The plan was published as version 0.1.0. These were done otherwise.',
  );
  const rows = await section
    .locator('table')
    .evaluateAll((tables) =>
      tables.map((table) => table.textContent.replaceAll(/\s+/g, ' ')).filter((text) => text.includes('T4')),
    );
  expect(rows.join(' ')).toContain('T4 2 3');
  await visit.close();
});
