/** Weighs what a browser loads for a page. */
import { gzipSync } from 'node:zlib';
import type { Browser, Response } from 'playwright-core';
import { openPage } from './browser.ts';
import type { StaticServer } from '../../src/commands/static-server.ts';

/** Bytes; text is compressed by gzip, as a host would send it. */
export interface PageWeight {
  /** HTML, style sheets and scripts together. */
  text: number;
  /** Scripts, those inside the HTML included. */
  scripts: number;
  /** Fonts as they are: they are compressed already. */
  fonts: number;
}

export async function pageWeight(browser: Browser, site: StaticServer, path: string): Promise<PageWeight> {
  const { context, page } = await openPage(browser, site);
  const responses: Response[] = [];
  page.on('response', (response) => responses.push(response));
  try {
    await page.goto(site.url + path, { waitUntil: 'networkidle' });
    const inline = await page.evaluate(() => {
      const scripts = [...document.querySelectorAll<HTMLScriptElement>('script:not([src])')];
      return scripts.filter(({ type }) => !type.includes('json')).map((script) => script.textContent);
    });
    const weight = { text: 0, scripts: inline.length > 0 ? gzipSync(inline.join('\n')).length : 0, fonts: 0 };
    for (const response of responses) {
      const kind = response.request().resourceType();
      if (!['document', 'stylesheet', 'script', 'font'].includes(kind)) continue;
      const body = await response.body();
      if (kind === 'font') weight.fonts += body.length;
      else weight.text += gzipSync(body).length;
      if (kind === 'script') weight.scripts += gzipSync(body).length;
    }
    return weight;
  } finally {
    await context.close();
  }
}
