import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import messages from '../../src/model/messages.json' with { type: 'json' };
import { givenTexts, type GivenTexts } from '../support/given-texts.ts';
import { launchBrowser, openPage, serveSite } from '../support/browser.ts';
import { overflow } from '../support/overflow.ts';
import { pagesOf } from '../support/pages.ts';
import { builtSite, demo } from '../support/site.ts';
import { visibleTexts } from '../support/visible-texts.ts';
import { allowedInEnglish, type Allowed } from './spanish-site.ts';

const spanish = new Map<string, string>(Object.entries(messages).map(([english, { es }]) => [english, es]));

/** Words of English that no Spanish sentence has. */
const english =
  /(?<![\p{L}_'’.-])(the|of|and|with|was|were|is|are|by|from|not|which|each|this|that|than|its|their|has|have|for|on|be|where|what|how|when|or|but|an|every|at|any|there|into|out|under|per)(?![\p{L}_'’.-])/iu;

/** What an author wrote stands in pieces there, parted by what components say. */
const isSheet = (path: string): boolean => /^fact-sheets\/.|\/fact-sheet\//.test(path);

describe('A site in Spanish', () => {
  let folder: string;
  let dist: string;
  let inEnglish: string;
  let given: GivenTexts;
  const pageOf = (site: string, path: string) =>
    readFile(join(site, path.endsWith('.html') ? path : join(path, 'index.html')), 'utf8');
  const allowed = (path: string, text: string, by: Allowed['by']): boolean =>
    allowedInEnglish.some((each) => each.by === by && each.pages.test(path) && each.texts.test(text));

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'spanish-'));
    await cp(demo, folder, { recursive: true });
    const settings = join(folder, 'site.yaml');
    const text = await readFile(settings, 'utf8');
    await writeFile(settings, text.replace('language: en', 'language: es'));
    dist = (await builtSite(folder)).dist;
    inEnglish = (await builtSite()).dist;
    given = await givenTexts(folder);
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  /** A text that is alike in both languages, and yet none that a grower gave, a number, a unit or a name. */
  function isLeftOver(path: string, text: string): boolean {
    const unnumbered = text.replace(/^\d+\. /, '');
    const translated = spanish.get(text);
    if (allowed(path, text, 'same')) return false;
    if (isSheet(path) && given.has(text)) return false;
    if (translated !== undefined) return translated !== text;
    return /\p{L}{3}/u.test(given.without(text)) && !given.isGiven(unnumbered);
  }

  /** A text in which English stands, beside what a grower gave. */
  function hasEnglish(path: string, text: string): boolean {
    if (allowed(path, text, 'words')) return false;
    const unnumbered = text.replace(/^\d+\. /, '').replace(/^\d+ \p{L}{3}( \(.*?\))?: /u, '');
    if (isSheet(path) && given.has(text)) return false;
    return !given.isGiven(unnumbered) && english.test(given.without(text));
  }

  it('has every page in the language of its settings, or of its sheet', async () => {
    const pages = await pagesOf(dist);
    expect(pages.length).toBeGreaterThan(40);
    for (const path of pages) expect(await pageOf(dist, path), path).toMatch(/<html lang="es"/);
  });

  it('shows no text of its own that is the English site’s', async () => {
    const found: string[] = [];
    for (const path of await pagesOf(dist)) {
      const before = new Set(visibleTexts(await pageOf(inEnglish, path)).map(({ text }) => text));
      const texts = visibleTexts(await pageOf(dist, path)).filter(({ text }) => before.has(text));
      found.push(
        ...texts
          .filter(({ text }) => isLeftOver(path, text))
          .map(({ kind, text }) => `/${path} ${kind}: ${text}`),
      );
    }
    expect(found).toEqual([]);
  });

  it('has no English words in a sentence of its own', async () => {
    const found: string[] = [];
    for (const path of await pagesOf(dist)) {
      const texts = visibleTexts(await pageOf(dist, path)).filter(({ text }) => hasEnglish(path, text));
      found.push(...texts.map(({ kind, text }) => `/${path} ${kind}: ${text}`));
    }
    expect(found).toEqual([]);
  });

  it('allows no English that is not there any more', async () => {
    const unused: Allowed[] = [];
    const pages = await pagesOf(dist);
    const texts = new Map<string, string[]>();
    for (const path of pages)
      texts.set(
        path,
        visibleTexts(await pageOf(dist, path)).map(({ text }) => text),
      );
    for (const each of allowedInEnglish) {
      const stands = pages.some(
        (path) => each.pages.test(path) && texts.get(path)!.some((text) => each.texts.test(text)),
      );
      if (!stands) unused.push(each);
    }
    expect(unused).toEqual([]);
  });

  it('is read by rules that would find English', async () => {
    expect(isLeftOver('', 'Every trial, newest first')).toBe(true);
    expect(isLeftOver('', 'Words of a page that nobody translated')).toBe(true);
    expect(isLeftOver('', 'Three autumn lettuces in four tanks')).toBe(false);
    expect(isLeftOver('', '12,4 kg/m²')).toBe(false);
    expect(hasEnglish('', 'Solution strength 0.5, per plant harvested')).toBe(true);
    expect(hasEnglish('', 'Datos: Four lettuces, one tank each')).toBe(false);
    expect(hasEnglish('', 'Medias de los ensayos, con sus límites')).toBe(false);
    expect(visibleTexts(await pageOf(dist, 'compare/')).length).toBeGreaterThan(100);
  });

  describe('in a browser', () => {
    let browser: Awaited<ReturnType<typeof launchBrowser>>;
    let server: Awaited<ReturnType<typeof serveSite>>;
    beforeAll(async () => {
      browser = await launchBrowser();
      server = await serveSite(dist);
    });
    afterAll(async () => {
      await browser.close();
      await server.close();
    });

    it('checks a folder in Spanish', async () => {
      const { context, page, faults } = await openPage(browser, server, { width: 320 });
      await page.goto(`${server.url}check/`);
      await page.click('#try-example');
      await page.waitForSelector('#result:not([hidden])');
      const said = await page.innerText('#result');
      expect(said).toContain('Nada que corregir');
      expect(said).toContain('Qué se publicaría de');
      expect(said).toContain('pesó menos que el testigo');
      expect(english.test(given.without(said)), said).toBe(false);
      expect(await overflow(page)).toEqual([]);
      expect(faults).toEqual([]);
      await context.close();
    });

    it.each([1024, 1280])('has the units in the first line of its header at %i px', async (width) => {
      const { context, page } = await openPage(browser, server, { width });
      await page.goto(server.url);
      const [title, nav, units] = await Promise.all(
        ['.site-title', '.site-header nav', '.units-switch'].map((part) => page.locator(part).boundingBox()),
      );
      expect(units!.x).toBeGreaterThanOrEqual(nav!.x + nav!.width);
      expect(title!.y).toBeLessThan(units!.y + units!.height);
      expect(units!.y).toBeLessThan(title!.y + title!.height);
      await context.close();
    });

    it('compares what is chosen in Spanish', async () => {
      const { context, page, faults } = await openPage(browser, server, { width: 320 });
      await page.goto(`${server.url}compare/`);
      await page.waitForSelector('#choices details');
      await page.check('input[name="replicated"]');
      await page.waitForFunction(() => document.querySelector('#compare-told')?.textContent !== '');
      expect(await page.textContent('#compare-told')).toMatch(/^\d ensayos, \d cultivares\. /);
      const said = await page.innerText('[data-part="answer"]:visible');
      expect(said).toContain('Elegido: solo ensayos con repeticiones.');
      for (const details of await page.locator('#choices details').all()) {
        await details.evaluate((each) => each.setAttribute('open', ''));
      }
      const choices = await page.innerText('#choices');
      expect(english.test(given.without(`${said} ${choices}`)), choices).toBe(false);
      expect(await overflow(page)).toEqual([]);
      expect(faults).toEqual([]);
      await context.close();
    });
  });

  it('writes numbers with a comma and seasons by their names', async () => {
    const html = (await pageOf(dist, 'trials/autumn-lettuce-2025/')).replace(
      /<(script|style|code|pre)\b[\s\S]*?<\/\1>/g,
      ' ',
    );
    expect(html).toContain('131,0');
    expect(html).not.toContain('131.0');
    expect(await pageOf(dist, 'cultivars/slate-egret/')).toContain('otoño 2025');
  });
});
