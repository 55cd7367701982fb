/** The pages of a built site. */
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';

/**
 * The addresses of all HTML pages in a built folder, relative to its root and in order: '' is the home
 * page, 'trials/' the page in trials/index.html, '404.html' the page of that name.
 */
export async function pagesOf(dist: string): Promise<string[]> {
  const entries = await readdir(dist, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(dist.length + 1)
        .replaceAll('\\', '/'),
    )
    .map((path) => path.replace(/(^|\/)index\.html$/, '$1'))
    .sort();
}

/** The addresses of the trial pages. */
export async function trialPagesOf(dist: string): Promise<string[]> {
  return (await pagesOf(dist)).filter((path) => /^trials\/[^/]+\/$/.test(path));
}
