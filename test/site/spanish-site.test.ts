import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtSite, demo } from '../support/site.ts';

/** Pages whose own words are all in Spanish, and of each the words of the program that would be there in English. */
const pages = [
  { path: '', telling: /Home|The latest|Published by/ },
  { path: 'trials/', telling: /Every trial|Arrangement|Design/ },
  { path: 'trials/autumn-lettuce-2025/', telling: /Standard deviation|The numbers of this figure|Take care/ },
  { path: 'cultivars/', telling: /Beside the check|Grown|told apart/ },
  {
    path: 'cultivars/slate-egret/',
    telling: /What it gave|95% interval|stood|Standard error|trial by trial/,
  },
  { path: 'plan/', telling: /Draw the lots|How many/ },
];

describe('A site in Spanish', () => {
  let folder: string;
  let dist: string;
  const textOf = async (path: string) =>
    (await readFile(join(dist, path, 'index.html'), 'utf8'))
      .replace(/<(script|style|code|pre)\b[\s\S]*?<\/\1>/g, ' ')
      .replace(/<title>[\s\S]*?<\/title>/, ' ');

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'spanish-'));
    await cp(demo, folder, { recursive: true });
    const settings = join(folder, 'site.yaml');
    const text = await readFile(settings, 'utf8');
    await writeFile(settings, text.replace('language: en', 'language: es'));
    dist = (await builtSite(folder)).dist;
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  it.each(pages)('says none of its own words in English on /$path', async ({ path, telling }) => {
    const html = await textOf(path);
    expect(html).toContain('<html lang="es"');
    expect(html.replace(/<[^>]+>/g, ' ')).not.toMatch(telling);
  });

  it('writes numbers with a comma and seasons by their names', async () => {
    const html = await textOf('trials/autumn-lettuce-2025/');
    expect(html).toContain('131,0');
    expect(html).not.toContain('131.0');
    expect(await textOf('cultivars/slate-egret/')).toContain('otoño 2025');
  });
});
