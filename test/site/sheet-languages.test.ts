import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { builtSite } from '../support/site.ts';

const english = 'trials/autumn-lettuce-2025/fact-sheet/';
const spanish = `${english}es/`;

describe('A fact sheet in two languages', () => {
  const pages = new Map<string, string>();
  const page = (path: string) => pages.get(path)!;
  const main = (path: string) => /<main[\s\S]*<\/main>/.exec(page(path))![0];
  const text = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ');

  beforeAll(async () => {
    const { dist } = await builtSite();
    for (const path of [english, spanish])
      pages.set(path, await readFile(join(dist, path, 'index.html'), 'utf8'));
  });

  it('is a page of each language, and the frame of the other says that it is in the language of the site', () => {
    expect(page(english)).toContain('<html lang="en"');
    expect(page(spanish)).toContain('<html lang="es"');
    expect(page(spanish)).toMatch(/<header class="site-header" lang="en"/);
    expect(page(spanish)).toMatch(/<footer class="site-footer" lang="en"/);
    expect(page(english)).not.toMatch(/<header class="site-header" lang=/);
  });

  it.each([english, spanish])(
    'names both pages in the head of %s, and the English one for all others',
    (path) => {
      const links = [...page(path).matchAll(/<link rel="alternate" hreflang="([^"]+)" href="([^"]+)"/g)];
      expect(links.map(([, language, address]) => [language, new URL(address!).pathname])).toEqual([
        ['en', `/${english}`],
        ['es', `/${spanish}`],
        ['x-default', `/${english}`],
      ]);
    },
  );

  it('leads from each page to the other by the name of its language', () => {
    expect(main(english)).toMatch(
      new RegExp(`<a href="/${spanish}" lang="es" hreflang="es">\\s*Español\\s*</a>`),
    );
    expect(main(spanish)).toMatch(
      new RegExp(`<a href="/${english}" lang="en" hreflang="en">\\s*English\\s*</a>`),
    );
  });

  it('has no hreflang where there is one language only', async () => {
    const { dist } = await builtSite();
    const alone = await readFile(join(dist, 'trials/spring-lettuce-2026/fact-sheet/index.html'), 'utf8');
    expect(alone).not.toContain('hreflang');
  });

  it('writes numbers, days and units as its language does', () => {
    expect(text(main(spanish))).toContain('20 de octubre de 2025');
    expect(text(main(spanish))).toMatch(/131,0/);
    expect(text(main(english))).toMatch(/131\.0/);
  });

  it('says in its language what components, figures, tables and cautions say, the reasons of findings too', () => {
    const words = text(main(spanish));
    expect(words).toContain('Desviación estándar');
    expect(words).not.toMatch(/These are not the replicates|The numbers of this figure|Take care|Standard/);
    expect(text(main(english))).toContain('These are not the replicates');
  });
});
