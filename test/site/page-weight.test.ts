import { expect, test } from 'vitest';
import { launchBrowser, serveSite } from '../support/browser.ts';
import { pageWeight } from '../support/page-weight.ts';
import { trialPagesOf } from '../support/pages.ts';
import { builtSite } from '../support/site.ts';

const KB = 1000;
const most = { text: 80 * KB, scripts: 10 * KB, fonts: 60 * KB };

test('a trial page weighs under 80 kB of text, 10 kB of it scripts, and 60 kB of fonts', async () => {
  const { dist } = await builtSite();
  const server = await serveSite(dist);
  const browser = await launchBrowser();
  const paths = await trialPagesOf(dist);
  const faults: string[] = [];
  for (const path of paths) {
    const weight = await pageWeight(browser, server, path);
    expect(weight.text).toBeGreaterThan(0);
    for (const kind of ['text', 'scripts', 'fonts'] as const) {
      if (weight[kind] > most[kind])
        faults.push(`/${path}: ${kind} weighs ${weight[kind]} of ${most[kind]} bytes`);
    }
  }
  await browser.close();
  await server.close();
  expect(paths.length).toBeGreaterThan(0);
  expect(faults).toEqual([]);
});
