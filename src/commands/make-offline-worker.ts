/** Writes the script that keeps the page for weighing in on the reader's device, once the pages are built. */
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { languageOf } from '../model/language.ts';
import type { Library } from '../model/library.ts';
import { offlineWorker } from '../publish/offline-worker.ts';
import { weighTrialPath } from '../publish/weigh-trials.ts';

const page = 'weigh/';

/** Finds what the built page is made of, and writes `weigh/offline.js` beside it. */
export async function makeOfflineWorker(library: Library, output: string): Promise<void> {
  const { pathname } = new URL(library.site.url);
  const base = pathname.replace(/\/*$/, '/');
  const files = [
    ...(await partsOf(output, `${page}index.html`)).filter((part) => isNeeded(part, library.site.language)),
    'icon.svg',
    `${page}app.webmanifest`,
    // A trial that still grows is opened beside its tanks; of one that is finished nobody needs more than its page.
    ...library.trials
      .filter(({ trial }) => trial.metadata.status !== 'finished')
      .map(({ trial }) => weighTrialPath(trial.id)),
  ].sort();
  const hash = createHash('sha256');
  for (const file of [`${page}index.html`, ...files]) {
    hash.update(`${file}\0`).update(await readFile(join(output, file)));
  }
  const version = hash.digest('hex').slice(0, 16);
  const addresses = [page, ...files].map((file) => base + file);
  await writeFile(join(output, page, 'offline.js'), offlineWorker(version, base + page, addresses));
}

/** The words of other languages are loaded only by a page in one of them. */
function isNeeded(part: string, language = 'en'): boolean {
  return !part.startsWith('assets/messages.') || languageOf(language) !== 'en';
}

/** The scripts, styles and fonts that a page names, and all that those name in turn. Their names hold their hash. */
async function partsOf(output: string, html: string): Promise<string[]> {
  const names = (await readdir(join(output, 'assets'))).filter((name) => /\.(?:js|css|woff2)$/.test(name));
  const found = new Set<string>();
  const lookInto = async (file: string): Promise<void> => {
    if (file.endsWith('.woff2')) return;
    const text = await readFile(join(output, file), 'utf8');
    for (const name of names) {
      const part = `assets/${name}`;
      if (found.has(part) || !text.includes(name)) continue;
      found.add(part);
      await lookInto(part);
    }
  };
  await lookInto(html);
  return [...found];
}
