/** Each page says in two sentences what it is for, before anything is asked of its reader. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { navigation } from '../../src/components/navigation.ts';
import { builtSite } from '../support/site.ts';

const tools = ['', 'plan/', 'weigh/', 'check/', 'help/', 'licence/', 'data/checks/', 'methods/components/'];
const pages = [...new Set([...tools, ...navigation.map(({ path }) => path)])];

/** The text of the paragraphs that follow the heading, up to the first form, list, table, section or script. */
function headOf(html: string): string {
  const main = /<main[\s\S]*?<\/main>/.exec(html)![0];
  const after = main.slice(main.indexOf('</h1>') + 5);
  const paragraphs: string[] = [];
  for (const [, tag, text] of after.matchAll(
    /<(p|form|ul|ol|table|section|script|nav|dl|search)\b[^>]*>([\s\S]*?)<\/\1>/g,
  )) {
    // The home page has its box for the search in between.
    if (tag === 'form' || tag === 'search' || tag === 'script') continue;
    if (tag !== 'p') break;
    paragraphs.push(text!.replaceAll(/<[^>]+>/g, ''));
  }
  return paragraphs.join(' ');
}

test.each(pages)('/%s explains itself in two sentences', async (path) => {
  const { dist } = await builtSite();
  const head = headOf(await readFile(join(dist, path, 'index.html'), 'utf8'));
  expect(head.match(/[^.?!:]{10,}[.?!:](?=\s|$)/g)?.length ?? 0).toBeGreaterThanOrEqual(2);
});

test('/help/ names every page of the navigation, and none twice', async () => {
  const { dist } = await builtSite();
  const html = await readFile(join(dist, 'help', 'index.html'), 'utf8');
  const list = html.slice(html.indexOf('id="pages"'), html.indexOf('</main>'));
  const linked = [...list.matchAll(/<dt>\s*<a href="([^"]+)"/g)].map(([, to]) => to!);
  expect(new Set(linked).size).toBe(linked.length);
  for (const { path } of navigation) expect(linked.some((to) => to.endsWith(`/${path}`))).toBe(true);
});
