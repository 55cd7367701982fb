/** Makes the search index of a site: files that a reader's browser loads piece by piece. */
import { readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { close, createIndex, type PagefindIndex } from 'pagefind';
import type { Library } from '../model/library.ts';
import { say } from '../model/say.ts';
import type { SearchRecord } from '../model/search.ts';
import type { PublishedFile } from '../publish/files.ts';
import { searchRecords } from '../publish/search-records.ts';
import { root } from './folders.ts';
import { mediaType } from './media-type.ts';
import { searchProgramFault } from './search-program.ts';

/** The folder of the index under the site's own path. */
export const searchFolder = 'pagefind';

export interface SearchIndex {
  /** Below the site's folder; none where no index could be made. */
  files: readonly PublishedFile[];
  /** Why there is none, in a sentence; null where there is one. */
  missing: string | null;
}

/** Of all that the index maker brings, what our own page loads; its ready-made interfaces stay behind. */
const needed = /^(pagefind\.js|pagefind-worker\.js|pagefind-entry\.json|.*\.(pf_meta|pf_index|pf_fragment))$/;

/**
 * The index of everything that can be found. It is made by a program for the machine; where there is none, or it
 * does not run, the site is built without a search and says so.
 */
export async function makeSearch(library: Library): Promise<SearchIndex> {
  const fault = await searchProgramFault();
  if (fault !== null) return without(fault);
  try {
    const language = (library.site.language ?? 'en').toLowerCase();
    const files = await filesOf(searchRecords(library), language);
    return { files: [...files, await licence()], missing: null };
  } catch (error) {
    return without(error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error));
  } finally {
    await close();
  }
}

function without(reason: string): SearchIndex {
  return {
    files: [],
    missing: say('The site has no search: its index cannot be made here ({reason}).', { reason }),
  };
}

async function filesOf(records: readonly SearchRecord[], language: string): Promise<PublishedFile[]> {
  const { index, errors } = await createIndex({ forceLanguage: language });
  if (index === undefined) throw new Error(errors.join('; '));
  // One after the other: their order decides their numbers, and so every byte of the index.
  for (const record of records) await add(index, record, language);
  const made = await index.getFiles();
  if (made.errors.length > 0) throw new Error(made.errors.join('; '));
  const entry = made.files.find(({ path }) => path === 'pagefind-entry.json');
  const stemmers = entry ? stemmersOf(new TextDecoder().decode(entry.content)) : [];
  return made.files
    .filter(({ path }) => needed.test(path) || stemmers.includes(path))
    .map(({ path, content }) => fileOf(path, content))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

async function add(index: PagefindIndex, record: SearchRecord, language: string): Promise<void> {
  const { kind, path, title, season, sentence, texts } = record;
  const { errors } = await index.addCustomRecord({
    url: path,
    content: texts.join(' \u00b7 '),
    language,
    meta: { title, kind, season, metric: sentence.metric, us: sentence.us },
  });
  if (errors.length > 0) throw new Error(errors.join('; '));
}

/** The programs that reduce words to their stems, one for each language of the index. */
function stemmersOf(entry: string): string[] {
  const { languages } = JSON.parse(entry) as { languages: Record<string, { wasm: string | null }> };
  return Object.values(languages).map(({ wasm }) => `wasm.${wasm ?? 'unknown'}.pagefind`);
}

/** The licence of what is copied into the site asks to go with it. */
async function licence(): Promise<PublishedFile> {
  return fileOf('LICENSE.txt', await readFile(join(root, 'node_modules', 'pagefind', 'LICENSE', 'LICENSE')));
}

function fileOf(path: string, bytes: Uint8Array): PublishedFile {
  return {
    name: `${searchFolder}/${path}`,
    bytes,
    mediaType: mediaType(extname(path)),
    description: 'A part of the search.',
  };
}
