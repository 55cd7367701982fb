import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { builtSite, demo } from '../support/site.ts';
import { launchBrowser, serveSite } from '../support/browser.ts';
import { type PdfStructure, pdfStructure, type StructureElement } from '../support/pdf-structure.ts';

const env = { TANKSIDE_PDF: '1' };
let dist = '';
let files: string[] = [];
let printed = new Map<string, PdfStructure>();

beforeAll(async () => {
  ({ dist } = await builtSite(demo, { env }));
  files = (await readdir(dist, { recursive: true })).filter((name) => name.endsWith('.pdf')).sort();
  printed = new Map(
    await Promise.all(
      files.map(async (name) => [name, pdfStructure(await readFile(join(dist, name)))] as const),
    ),
  );
}, 300_000);

const each = (look: (structure: PdfStructure) => unknown): [string, unknown][] =>
  files.map((name) => [name, look(printed.get(name)!)]);
const all = (value: unknown): [string, unknown][] => files.map((name) => [name, value]);

/** The page that an element begins on. */
const pageOf = ({ pages }: StructureElement): string | undefined => [...pages][0];

describe('The printed fact sheets of the demo', () => {
  it('are there for every sheet on both papers', async () => {
    const trials = await readdir(join(demo, 'trials'));
    for (const id of trials)
      for (const paper of ['letter', 'a4'])
        expect(files).toContain(join('trials', id, 'fact-sheet', `fact-sheet-${paper}.pdf`));
    expect(files.length).toBeGreaterThanOrEqual(2 * trials.length + 2);
  });

  it('have two to four pages', () => {
    expect(each(({ pages }) => pages >= 2 && pages <= 4)).toEqual(all(true));
  });

  it('are tagged, with a title and a language', () => {
    expect(each(({ marked }) => marked)).toEqual(all(true));
    expect(each(({ title }) => (title ?? '').length > 10)).toEqual(all(true));
    const languageOf = (name: string) => (/[\\/]es[\\/]/.test(name) ? 'es' : 'en');
    expect(each(({ language }) => language)).toEqual(files.map((name) => [name, languageOf(name)]));
  });

  it('have one first heading, and others below it', () => {
    const count = ({ elements }: PdfStructure, type: string) =>
      elements.filter((one) => one.type === type).length;
    expect(each((one) => count(one, 'H1'))).toEqual(all(1));
    expect(each((one) => count(one, 'H2') >= 4)).toEqual(all(true));
  });

  it('split no figure between pages, and describe each', () => {
    const figures = [...printed.values()].flatMap(({ elements }) =>
      elements.filter(({ type }) => type === 'Figure'),
    );
    expect(figures.length).toBeGreaterThan(files.length);
    expect(figures.filter(({ pages }) => pages.size !== 1)).toEqual([]);
    const described = [...printed.values()].map(({ elements }) =>
      elements.filter(({ alt }) => (alt ?? '').length > 40),
    );
    expect(described.filter((some) => some.length === 0)).toEqual([]);
  });

  it('leave no heading behind at the foot of a page, nor the words that lead into its list', () => {
    const torn = [...printed].flatMap(([name, { elements }]) => {
      const run = elements.filter(({ type }) => /^(?:H\d|P|LI|TR|Figure)$/.test(type));
      return run.flatMap((element, index) => {
        const [next, afterNext] = [run[index + 1], run[index + 2]];
        if (!/^H\d$/.test(element.type) || next === undefined) return [];
        const led = next.type === 'P' && afterNext?.type === 'LI' ? [next, afterNext] : [next];
        return led.some((one) => pageOf(one) !== pageOf(element))
          ? [`${name}: ${element.type} ${String(index)}`]
          : [];
      });
    });
    expect(torn).toEqual([]);
  });

  it('keep the note of a table below it', async () => {
    let notes = 0;
    for (const [name, { elements }] of printed) {
      const page = await readFile(join(dist, name, '..', 'index.html'), 'utf8');
      const shown = page.replace(/<details[\s\S]*?<\/details>/g, '');
      const noted = [...shown.matchAll(/<\/table><\/div>(<p class="note")?/g)].map(
        ([, note]) => note !== undefined,
      );
      const run = elements.filter(({ type }) => type === 'Table' || type === 'P');
      const tables = run.flatMap(({ type }, index) => (type === 'Table' ? [index] : []));
      expect(tables.length, name).toBe(noted.length);
      for (const [place, index] of tables.entries()) {
        if (!noted[place]!) continue;
        notes += 1;
        expect([...run[index + 1]!.pages], name).toEqual([...run[index]!.pages]);
      }
    }
    expect(notes).toBeGreaterThan(files.length);
  });

  it('have a head on each page with the version of the data and the address, and colours of ink alone', async () => {
    const server = await serveSite(dist);
    const browser = await launchBrowser();
    try {
      const page = await browser.newPage();
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      await page.goto(`${server.url}trials/autumn-lettuce-2025/fact-sheet/`);
      const head = page.locator('.running-head');
      // What a browser repeats on every page is a table's head.
      expect(await head.evaluate((element) => getComputedStyle(element).display)).toBe('table-header-group');
      const words = await head.innerText();
      expect(words).toContain('version 1.1.0 of the data');
      expect(words).toContain('https://fernhollow.example.org/trials/autumn-lettuce-2025/fact-sheet/');
      expect(await page.locator('.as-pdf').isVisible()).toBe(false);
      const inks = await page.evaluate(() =>
        ['body', 'h1', '.fact-sheet a'].map((name) => getComputedStyle(document.querySelector(name)!).color),
      );
      expect(inks).toEqual(inks.map(() => 'rgb(0, 0, 0)'));
      // A margin there sends a list in columns that would just fit to the next page.
      const list = page.locator('.fact-sheet .cautions ul').first();
      expect(await list.evaluate((element) => getComputedStyle(element).marginBottom)).toBe('0px');
    } finally {
      await browser.close();
      await server.close();
    }
  });

  it('lead to the address of the site, and nowhere on this machine', () => {
    const links = [...printed.values()].flatMap((one) => one.links);
    expect(links.length).toBeGreaterThan(files.length);
    expect(links.filter((to) => !to.startsWith('https://'))).toEqual([]);
  });

  it('are linked from their pages with their sizes', async () => {
    const page = await readFile(
      join(dist, 'trials', 'four-lettuces-2024', 'fact-sheet', 'index.html'),
      'utf8',
    );
    expect(page).toMatch(
      /<a[^>]*href="fact-sheet-letter\.pdf"[^>]*>PDF on US Letter, \d[\d.]*\s(?:kB|MB)<\/a>/,
    );
    expect(page).toMatch(/<a[^>]*href="fact-sheet-a4\.pdf"[^>]*>PDF on A4, \d[\d.]*\s(?:kB|MB)<\/a>/);
  });

  it('are alike to the byte in another build', async () => {
    const again = await builtSite(demo, { env, copy: 'printed again' });
    for (const name of files) {
      const [first, second] = [await readFile(join(dist, name)), await readFile(join(again.dist, name))];
      expect(first.equals(second), name).toBe(true);
    }
  }, 300_000);
});
