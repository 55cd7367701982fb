/** Weighing in: how long from a key to the next plant, on a processor slowed four times. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runCommand } from '../support/site.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { growingId, growingPlants, writeGrowingContent } from '../support/growing-trial.ts';
import type { Bench, BenchResult } from './bench.ts';

const slower = 4;
const most = 50;

export const bench: Bench = {
  name: `Weighing in: from each tap to what it shows, 96 plants, processor ${String(slower)} times slower, against a bare page that writes as much text`,
  run,
};

async function run(): Promise<BenchResult> {
  const folder = await mkdtemp(join(tmpdir(), 'tankside-bench-'));
  const browser = await launchBrowser();
  try {
    const [content, dist] = [join(folder, 'content'), join(folder, 'dist')];
    await writeGrowingContent(content);
    const { code, output } = await runCommand(['build'], { TANKSIDE_CONTENT: content, TANKSIDE_OUT: dist });
    if (code !== 0) throw new Error(`the site was not built: ${output}`);
    const server = await serveSite(dist);
    const passes: Taps[][] = [];
    const bare: number[] = [];
    // The middle of three weigh-ins: what else the machine did meanwhile is no part of it.
    for (let pass = 0; pass < 3; pass += 1) {
      const { context, page } = await openPage(browser, server, { width: 320, height: 568 });
      await page.goto(`${server.url}weigh/?trial=${growingId}`);
      await page.locator('#set-up-form button').click();
      await page.locator('#weigh-next').waitFor();
      const client = await context.newCDPSession(page);
      await client.send('Emulation.setCPUThrottlingRate', { rate: slower });
      const weights = growingPlants.map(({ weight }) => String(weight)).slice(0, -1);
      passes.push(await page.evaluate(entering, weights));
      bare.push(...(await page.evaluate(bareWriting, weights.length)));
      await context.close();
    }
    await server.close();
    const times = passes[0]!.map(({ kind }, index) => ({
      kind,
      time: middle(passes.map((pass) => pass[index]!.time)),
    }));
    const ofKind = (wanted: Taps['kind']) =>
      times.flatMap(({ kind, time }) => (kind === wanted ? [time] : []));
    const row = (name: string, values: number[]) => ({
      what: name,
      taps: values.length,
      'median ms': Number(middle(values).toFixed(1)),
      'longest ms': Number(Math.max(...values).toFixed(1)),
    });
    const longest = Math.max(...times.map(({ time }) => time));
    return {
      rows: [
        row('large key to next plant, laid out', ofKind('next')),
        row('dead to next plant, laid out', ofKind('dead')),
        row('a digit, laid out', ofKind('digit')),
        row('a remark, laid out', ofKind('remark')),
        row('bare text, laid out', bare),
      ],
      misses: longest > most ? [`the slowest tap took ${longest.toFixed(0)} ms, over ${String(most)}.`] : [],
    };
  } finally {
    await browser.close();
    await rm(folder, { recursive: true, force: true });
  }
}

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** A tap, and how long it took until what it changes was shown and laid out, in ms. */
interface Taps {
  kind: 'next' | 'dead' | 'digit' | 'remark';
  time: number;
}

/** In the page: types each weight by its own keys, now and then with a remark or as dead, and times every tap. */
const entering = (weights: readonly string[]): Taps[] => {
  const where = document.getElementById('weigh-where')!;
  const taps: Taps[] = [];
  const tap = (kind: Taps['kind'], selector: string): void => {
    const key = document.querySelector<HTMLElement>(selector)!;
    const started = performance.now();
    key.click();
    // Asking for a size lays the page out, which painting would.
    document.body.getBoundingClientRect();
    taps.push({ kind, time: performance.now() - started });
  };
  weights.forEach((weight, index) => {
    const before = where.textContent;
    if (index % 5 === 2) tap('remark', '#weigh-remarks button:not(#weigh-other)');
    if (index % 12 === 7) tap('dead', '[data-status="dead"]');
    else {
      for (const digit of weight) tap('digit', `[data-key="${digit}"]`);
      tap('next', '#weigh-next');
    }
    if (where.textContent === before) throw new Error(`no next plant after ${before}`);
  });
  return taps;
};

/** In the page: the least that any page does, a text changed and laid out. */
const bareWriting = (count: number): number[] => {
  const line = document.body.appendChild(document.createElement('p'));
  return Array.from({ length: count }, (_, index) => {
    const started = performance.now();
    line.textContent = `T1 · row ${index} · column 1`;
    document.body.getBoundingClientRect();
    return performance.now() - started;
  });
};
