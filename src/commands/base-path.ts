/** The path that a built site stands under. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

const CANONICAL = /<link\b[^>]*\brel="?canonical"?[^>]*>/;
const HREF = /\bhref="([^"]+)"/;

/**
 * Read off the home page's canonical address, so that it is the path this site was built for, whatever
 * site.yaml says by now. `/` where the page names none.
 */
export async function basePath(folder: string): Promise<string> {
  const html = await readFile(join(folder, 'index.html'), 'utf8').catch(() => '');
  const address = HREF.exec(CANONICAL.exec(html)?.[0] ?? '')?.[1];
  return address !== undefined && URL.canParse(address) ? new URL(address).pathname : '/';
}
