/** The page that compares, in the real browser, with many trials and cultivars. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { root } from '../../src/commands/folders.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import type { Bench, BenchResult } from './bench.ts';
import { writeSeasonFolders } from './season-folders.ts';
import { timedProcess } from './timed-process.ts';

const MOST = { firstView: 1000, change: 100, scripts: 120_000 };
const changes = 11;

export const bench: Bench = {
  name: 'Comparing in the browser: 200 trials x 40 cultivars, against an empty page of the same site (404)',
  run,
};

async function run({ quick }: { quick: boolean }): Promise<BenchResult> {
  const size = quick ? { trials: 20, cultivars: 20 } : { trials: 200, cultivars: 40 };
  const folder = await mkdtemp(join(tmpdir(), 'tankside-bench-'));
  const dist = join(folder, 'dist');
  const browser = await launchBrowser();
  try {
    const content = join(folder, 'content');
    await writeSeasonFolders(content, { ...size, seed: 1938 });
    const env = { TANKSIDE_CONTENT: content, TANKSIDE_OUT: dist };
    await timedProcess([join(root, 'src', 'commands', 'tankside.ts'), 'build'], root, env);
    const server = await serveSite(dist);
    const { page } = await openPage(browser, server);
    let scripts = 0;
    page.on('response', (response) => {
      if (response.status() === 200 && response.url().endsWith('.js'))
        void response.body().then((body) => (scripts += gzipSync(body).length));
    });
    await page.goto(`${server.url}404.html`);
    const empty = await firstView(page);
    await page.goto(`${server.url}compare/`);
    const first = await firstView(page);
    await page.waitForLoadState('networkidle');
    await shown(page);
    const times: number[] = [];
    for (let change = 0; change < changes; change += 1) times.push(await timeOfChange(page));
    const middle = [...times].sort((a, b) => a - b)[Math.floor(changes / 2)]!;
    await server.close();
    const row = {
      trials: size.trials,
      cultivars: size.cultivars,
      'empty page ms': empty,
      'first view ms': first,
      'times the empty page': first / empty,
      'change ms (median)': middle,
      'scripts kB gz': scripts / 1000,
    };
    const misses = [
      ...(first > MOST.firstView
        ? [`the first view takes ${first.toFixed(0)} ms, over ${MOST.firstView}.`]
        : []),
      ...(middle > MOST.change ? [`a change takes ${middle.toFixed(0)} ms, over ${MOST.change}.`] : []),
      ...(scripts > MOST.scripts ? [`the page's scripts are ${scripts} bytes, over ${MOST.scripts}.`] : []),
    ];
    return { rows: [row], misses };
  } finally {
    await browser.close();
    await rm(folder, { recursive: true, force: true });
  }
}

/** From the request of the page to its first picture with content. */
function firstView(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((done) => {
        new PerformanceObserver((list) => {
          for (const { name, startTime } of list.getEntries())
            if (name === 'first-contentful-paint') done(startTime);
        }).observe({ type: 'paint', buffered: true });
      }),
  );
}

/** Until the page has its data, so that a change is one of computing and drawing alone. */
async function shown(page: Page): Promise<void> {
  await page.check('input[name="replicated"]');
  await page.waitForFunction(() => location.search.includes('replicated'));
  await page.waitForTimeout(500);
}

/** From a change of one field to the next picture, with all computed and drawn anew. */
function timeOfChange(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((done) => {
        const field = document.querySelector<HTMLInputElement>('input[name="replicated"]')!;
        const before = performance.now();
        field.click();
        requestAnimationFrame(() => {
          setTimeout(() => {
            done(performance.now() - before);
          });
        });
      }),
  );
}
