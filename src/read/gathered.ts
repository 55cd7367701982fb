import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readTrialFolder } from './folder.ts';

/** What lies in a site's folder under gathered/. */
export interface GatheredFolder {
  /** Its cultivars.json; null where there is none. */
  cultivars: Uint8Array | null;
  /** Each trial's files by its id, in the order of the ids. */
  trials: ReadonlyMap<string, ReadonlyMap<string, Uint8Array>>;
}

/** Reads what was gathered from a site; empty where nothing was. Whatever is named like no trial is passed over. */
export async function readGathered(contentFolder: string, siteFolder: string): Promise<GatheredFolder> {
  const folder = join(contentFolder, 'gathered', siteFolder);
  const cultivars = await readFile(join(folder, 'cultivars.json')).catch(() => null);
  const trials = new Map<string, ReadonlyMap<string, Uint8Array>>();
  for (const id of await gatheredIds(folder)) trials.set(id, await readTrialFolder(join(folder, id)));
  return { cultivars, trials };
}

/** The ids of the trials that are kept in a site's folder, sorted. */
export async function gatheredIds(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  return entries
    .filter((entry) => entry.isDirectory() && /^[a-z0-9-]{3,64}$/.test(entry.name))
    .map(({ name }) => name)
    .sort();
}
