import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { serveFolder } from '../../src/commands/static-server.ts';
import { lotsOfManyDesigns } from '../compute/lots/lots-of-many-designs.ts';
import { launchBrowser, openPage } from '../support/browser.ts';
import { bundleForBrowser } from '../support/bundle.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const entry = fileURLToPath(new URL('../compute/lots/lots-of-many-designs.ts', import.meta.url));

test('the same seed draws the same layout in Node and in Chromium', async () => {
  const folder = await temporaryFolder({
    'lots.js': await bundleForBrowser(entry),
    'page.js': `import { lotsOfManyDesigns } from './lots.js';
      document.querySelector('pre').textContent = JSON.stringify(lotsOfManyDesigns());`,
    'index.html':
      '<!doctype html><meta charset="utf-8"><title>Lots</title><pre></pre><script type="module" src="page.js"></script>',
  });
  const server = await serveFolder(folder, { host: '127.0.0.1' });
  const browser = await launchBrowser();
  try {
    const { page } = await openPage(browser, server);
    await page.goto(server.url);
    await page.waitForFunction(() => document.querySelector('pre')?.textContent !== '');
    const inBrowser = JSON.parse((await page.locator('pre').textContent()) ?? '') as string[];
    const inNode = lotsOfManyDesigns();
    expect(inBrowser).toEqual(inNode);
    expect(new Set(inNode).size).toBe(inNode.length);
    expect(inNode.length).toBeGreaterThan(70);
  } finally {
    await browser.close();
    await server.close();
  }
});
