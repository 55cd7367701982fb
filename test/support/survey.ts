/** Reads every page of a built site in a browser without JavaScript: what its HTML itself says. */
import type { Browser, Page } from 'playwright-core';
import { openPage, serveSite } from './browser.ts';
import { overflow } from './overflow.ts';
import { pagesOf } from './pages.ts';

export interface Link {
  /** Where it leads, as a full address on the served host. */
  url: string;
  /** How it stands in the page, for messages. */
  written: string;
}

export interface Script {
  inline: string | undefined;
  type: string;
}

export interface SurveyedPage {
  /** Relative to the site's root: '' is the home page. */
  path: string;
  url: string;
  /** The head's elements as HTML, in order. */
  head: string[];
  policy: string | undefined;
  scripts: Script[];
  /** Attributes that run script, which a policy without unsafe-inline would refuse. */
  handlers: string[];
  /** Links, pictures, style sheets, scripts. */
  links: Link[];
  ids: string[];
  language: string;
  title: string;
  headings: string[];
  /** The visible text of the main part. */
  text: string;
  tableRows: number;
  /** Empty where the page fits 320 px. */
  overflow: string[];
}

export interface Survey {
  base: string;
  pages: SurveyedPage[];
  faults: string[];
}

/** Opens every page of a built folder at 320 px with scripts off. */
export async function survey(browser: Browser, dist: string): Promise<Survey> {
  const server = await serveSite(dist);
  const { context, page, faults } = await openPage(browser, server, { javaScript: false, width: 320 });
  const pages: SurveyedPage[] = [];
  try {
    for (const path of await pagesOf(dist)) {
      await page.goto(server.url + path);
      pages.push({ path, ...(await read(page)), overflow: await overflow(page) });
    }
  } finally {
    await context.close();
    await server.close();
  }
  return { base: server.url, pages, faults };
}

function read(page: Page): Promise<Omit<SurveyedPage, 'path' | 'overflow'>> {
  return page.evaluate(() => {
    const all = [...document.querySelectorAll('*')];
    const links = all.flatMap((element) => {
      return ['href', 'src', 'poster', 'srcset', 'xlink:href'].flatMap((name) => {
        const value = element.getAttribute(name);
        if (value === null) return [];
        const each =
          name === 'srcset' ? value.split(',').map((one) => one.trim().split(/\s+/)[0] ?? '') : [value];
        return each.map((one) => ({ url: new URL(one, document.baseURI).href, written: `${name}="${one}"` }));
      });
    });
    const policy = document.head.querySelector('meta[http-equiv="Content-Security-Policy" i]');
    return {
      url: location.href,
      head: [...document.head.children].map((element) => element.outerHTML),
      policy: policy?.getAttribute('content') ?? undefined,
      scripts: [...document.querySelectorAll('script')].map((script) => ({
        inline: script.hasAttribute('src') ? undefined : script.textContent,
        type: script.type,
      })),
      handlers: all.flatMap((element) => {
        const names = element.getAttributeNames().filter((name) => name.startsWith('on'));
        return names.map((name) => `${element.tagName.toLowerCase()} ${name}`);
      }),
      links,
      ids: [...document.querySelectorAll('[id]')].map((element) => element.id),
      language: document.documentElement.lang,
      title: document.title,
      headings: [...document.querySelectorAll('h1')].map((heading) => heading.innerText.trim()),
      text: document.querySelector('main')?.innerText.trim() ?? '',
      tableRows: document.querySelectorAll('main table tbody tr').length,
    };
  });
}
