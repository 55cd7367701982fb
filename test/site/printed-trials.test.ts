/** The trials' own pages on paper: what a browser makes of them on both sheets. */
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { type PdfStructure, pdfStructure, type StructureElement } from '../support/pdf-structure.ts';
import { builtSite, demo } from '../support/site.ts';

const printed = new Map<string, PdfStructure>();
/** Whether the workings are on paper: while they are folded, and with one of them unfolded. */
const workings: [folded: boolean, unfolded: boolean][] = [];

beforeAll(async () => {
  const { dist } = await builtSite();
  const [server, browser] = [await serveSite(dist), await launchBrowser()];
  try {
    for (const id of await readdir(join(demo, 'trials'))) {
      const { context, page } = await openPage(browser, server, { media: 'print' });
      await page.goto(`${server.url}trials/${id}/`);
      for (const format of ['A4', 'Letter'])
        printed.set(`${id} on ${format}`, pdfStructure(await page.pdf({ format, tagged: true })));
      const shown = () => page.locator('#workings').isVisible();
      const folded = await shown();
      await page.locator('section:has(> #workings) details').evaluateAll(([first]) => {
        first!.setAttribute('open', '');
      });
      workings.push([folded, await shown()]);
      if (captionPages.size === 0) await printLongTable(page);
      await context.close();
    }
  } finally {
    await browser.close();
    await server.close();
  }
}, 300_000);

/** How many pages the caption of a table of 30 rows is on, with so many px above it. */
const captionPages = new Map<number, number>();

async function printLongTable(page: Page): Promise<void> {
  await page.evaluate(() => {
    const table = document.querySelector('table:has(caption)')!;
    table.querySelector('caption')!.textContent = 'What was weighed, and where it stood. '.repeat(8);
    const [row] = table.querySelectorAll('tbody tr');
    table.querySelector('tbody')!.replaceChildren(...Array.from({ length: 30 }, () => row!.cloneNode(true)));
    document.querySelector('main')!.replaceChildren(document.createElement('hr'), table.parentElement!);
  });
  for (let above = 780; above <= 880; above += 10) {
    await page.locator('main hr').evaluate((rule, height) => {
      rule.style.marginBlock = `0 ${String(height)}px`;
    }, above);
    const { elements } = pdfStructure(await page.pdf({ format: 'Letter', tagged: true }));
    captionPages.set(above, elements.find(({ type }) => type === 'Caption')!.pages.size);
  }
}

const firstPage = ({ pages }: StructureElement) => [...pages][0];

describe('The printed pages of the trials', () => {
  it('have the words between a heading and its table on the page where both begin', () => {
    let seen = 0;
    const torn = [...printed].flatMap(([name, { elements }]) => {
      const run = elements.filter(({ type }) => /^(?:H\d|P|Table|Figure)$/.test(type));
      return run.flatMap((heading, index) => {
        const [words, table] = [run[index + 1], run[index + 2]];
        if (!heading.type.startsWith('H') || words?.type !== 'P' || table?.type !== 'Table') return [];
        seen += 1;
        const pages = new Set([heading, words, table].map(firstPage));
        return pages.size === 1 ? [] : [`${name}: ${heading.type}, ${String(index)}`];
      });
    });
    expect(torn).toEqual([]);
    expect(seen).toBeGreaterThan(printed.size);
  });

  it('turn no page within what names a table or figure', () => {
    const captions = [...printed].flatMap(([name, { elements }]) =>
      elements.flatMap(({ type, pages }) => (type === 'Caption' ? [{ name, pages: pages.size }] : [])),
    );
    expect(captions.length).toBeGreaterThan(10 * printed.size);
    expect(captions.filter(({ pages }) => pages !== 1)).toEqual([]);
    expect([...captionPages].filter(([, pages]) => pages !== 1)).toEqual([]);
  });

  it('have maps on their first page', () => {
    const first = [...printed].map(([name, { elements }]) => {
      const figure = elements.find(({ type }) => type === 'Figure');
      const title = elements.find(({ type }) => type === 'H1');
      return [name, figure !== undefined && firstPage(figure) === firstPage(title!)];
    });
    expect(first.filter(([, together]) => together !== true)).toEqual([]);
  });

  it('have a heading for the workings only where one is unfolded', () => {
    expect(workings).toHaveLength(printed.size / 2);
    expect(workings.filter(([folded, unfolded]) => folded || !unfolded)).toEqual([]);
  });
});
