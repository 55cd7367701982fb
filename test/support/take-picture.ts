/** Takes the README's picture of the built site in dist/: `npm run build`, then run this file. */
import { join } from 'node:path';
import { outputFolder, root } from '../../src/commands/folders.ts';
import { launchBrowser, openPage, serveSite } from './browser.ts';

const PAGE = 'trials/autumn-lettuce-2025/';
const picture = join(root, '.github', 'trial-page.png');

const server = await serveSite(outputFolder());
const browser = await launchBrowser();
const { page } = await openPage(browser, server, { width: 1100, height: 1000 });
await page.goto(server.url + PAGE, { waitUntil: 'networkidle' });
await page.screenshot({ path: picture });
await browser.close();
await server.close();
process.stdout.write(`${picture}\n`);
