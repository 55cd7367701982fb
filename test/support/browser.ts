/** A real browser for the tests, which may speak to the served site and to nothing else. */
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';
import { basePath } from '../../src/commands/base-path.ts';
import { findBrowser } from '../../src/commands/browser.ts';
import { serveFolder, type StaticServer } from '../../src/commands/static-server.ts';

/** Starts the browser that is on this machine. */
export async function launchBrowser(): Promise<Browser> {
  const executablePath = findBrowser();
  if (executablePath === undefined)
    throw new Error('there is no Chromium on this machine; npm test installs one');
  return chromium.launch({
    executablePath,
    headless: true,
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      // Whatever a page asks of another host, it gets no answer.
      '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE 127.0.0.1',
    ],
  });
}

/** Serves a built folder on a free port, under the path it was built for. */
export async function serveSite(dist: string): Promise<StaticServer> {
  return serveFolder(dist, { base: await basePath(dist), host: '127.0.0.1' });
}

export interface View {
  width?: number;
  height?: number;
  /** Whether the page's scripts run. */
  javaScript?: boolean;
  colours?: 'light' | 'dark';
  media?: 'screen' | 'print';
}

export interface Visit {
  context: BrowserContext;
  page: Page;
  /** What went wrong meanwhile: requests to another host, failed requests, errors on the console. */
  faults: string[];
}

/** A fresh page, with its own storage, that keeps account of what goes wrong in it. */
export async function openPage(browser: Browser, site: StaticServer, view: View = {}): Promise<Visit> {
  const { width = 1280, height = 900, javaScript = true, colours = 'light', media = 'screen' } = view;
  const context = await browser.newContext({
    viewport: { width, height },
    javaScriptEnabled: javaScript,
    colorScheme: colours,
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  await page.emulateMedia({ media });
  const faults: string[] = [];
  const { host } = new URL(site.url);
  const at = () => pathOf(page.url());
  page.on('request', (request) => {
    const url = new URL(request.url());
    const local = url.protocol === 'data:' || url.protocol === 'blob:';
    if (!local && url.host !== host) faults.push(`${at()} asked another host: ${request.url()}`);
  });
  page.on('requestfailed', (request) => {
    const aborted = request.failure()?.errorText === 'net::ERR_ABORTED';
    if (!aborted) faults.push(`${at()} could not load ${pathOf(request.url())}`);
  });
  page.on('response', (response) => {
    const missing = response.status() >= 400 && !/\/404(\.html|\/)?$/.test(pathOf(response.url()));
    if (missing) faults.push(`${at()} got ${response.status()} for ${pathOf(response.url())}`);
  });
  page.on('pageerror', (error) => faults.push(`${at()} threw: ${error.message}`));
  page.on('console', (message) => {
    // What could not be loaded is told above, with its address.
    const told = message.text().startsWith('Failed to load resource');
    if (message.type() === 'error' && !told) faults.push(`${at()} console: ${message.text()}`);
  });
  return { context, page, faults };
}

function pathOf(url: string): string {
  return URL.canParse(url) ? new URL(url).pathname : url;
}
