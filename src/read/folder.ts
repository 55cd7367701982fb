/** The only file of this room that touches the disk. */
import { access, constants, lstat, readdir, readFile, realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { largestFile, type Unread } from './folder-files.ts';

/** The names of the folders in `trials/`, sorted; files there and names that begin with a dot are passed over. */
export async function listTrials(contentFolder: string): Promise<string[]> {
  const trials = join(contentFolder, 'trials');
  const entries = await readdir(trials, { withFileTypes: true }).catch(() => []);
  const names: string[] = [];
  for (const entry of entries) {
    if (entry.name.startsWith('.')) continue;
    if (entry.isDirectory() || (entry.isSymbolicLink() && (await isFolder(join(trials, entry.name))))) {
      names.push(entry.name);
    }
  }
  return names.sort();
}

/** True where something stands in the place of `trials/` that is no folder. */
export async function isTrialsNoFolder(contentFolder: string): Promise<boolean> {
  const path = join(contentFolder, 'trials');
  const found = await lstat(path).catch(() => null);
  return found !== null && !(await isFolder(path));
}

/** What stands in a content folder, names that begin with a dot left out, sorted by name. */
export async function entriesOfContent(
  contentFolder: string,
): Promise<{ name: string; isFolder: boolean }[]> {
  const entries = await readdir(contentFolder, { withFileTypes: true }).catch(() => []);
  return entries
    .filter(({ name }) => !name.startsWith('.'))
    .map((entry) => ({ name: entry.name, isFolder: entry.isDirectory() }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

async function isFolder(path: string): Promise<boolean> {
  return stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
}

/** The bytes of site.yaml and cultivars.yaml; null where a file is absent or cannot be read. */
export async function readContentFiles(
  contentFolder: string,
): Promise<{ site: Uint8Array | null; cultivars: Uint8Array | null }> {
  const read = (name: string): Promise<Uint8Array | null> =>
    readFile(join(contentFolder, name)).catch(() => null);
  const [site, cultivars] = await Promise.all([read('site.yaml'), read('cultivars.yaml')]);
  return { site, cultivars };
}

/** The files that make a folder a trial's. */
const ofTrial = /^(trial\.ya?ml|layout\.csv|harvest\.csv|readings\.csv|factsheet\.mdx)$/i;

/** What stands in a content folder where its files and folders must be and cannot be read as such, sorted by path. */
export async function unreadOfContent(contentFolder: string): Promise<Unread[]> {
  const unread: Unread[] = [];
  for (const path of ['cultivars.yaml', 'fact-sheets', 'site.yaml']) {
    const wanted = path === 'fact-sheets' ? 'folder' : 'file';
    const reason = await whyUnread(join(contentFolder, path), wanted);
    if (reason !== null) unread.push({ path, reason });
  }
  const trials = join(contentFolder, 'trials');
  for (const entry of await readdir(trials, { withFileTypes: true }).catch(() => [])) {
    const path = `trials/${entry.name}`;
    if (entry.isFile() && ofTrial.test(entry.name))
      unread.push({ path, reason: 'not in the folder of a trial' });
    else if (entry.isSymbolicLink() && (await stat(join(trials, entry.name)).catch(() => null)) === null)
      unread.push({ path, reason: 'not readable' });
  }
  return unread.sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** Null also where nothing is there. */
async function whyUnread(path: string, wanted: 'file' | 'folder'): Promise<Unread['reason'] | null> {
  if ((await lstat(path).catch(() => null)) === null) return null;
  const found = await stat(path).catch(() => null);
  if (found === null) return 'not readable';
  if (wanted === 'folder') return found.isDirectory() ? null : 'not a folder';
  if (!found.isFile()) return 'not a regular file';
  return access(path, constants.R_OK).then(
    () => null,
    () => 'not readable' as const,
  );
}

/** The files of `fact-sheets/`, those across trials; none where there is no such folder. */
export async function readSheetsFolder(
  contentFolder: string,
): Promise<Map<string, Uint8Array> & { readonly unread: readonly Unread[] }> {
  const path = join(contentFolder, 'fact-sheets');
  return (await isFolder(path))
    ? readTrialFolder(path)
    : Object.assign(new Map<string, Uint8Array>(), { unread: [] });
}

/**
 * All regular files of a trial's folder by path with `/`, names that begin with a dot left out. A symbolic
 * link is followed where it stays within the folder. What is not read is listed in `unread`.
 */
export async function readTrialFolder(
  path: string,
): Promise<Map<string, Uint8Array> & { readonly unread: readonly Unread[] }> {
  const unread: Unread[] = [];
  const files = new Map<string, Uint8Array>();
  const root = await realpath(path).catch(() => path);
  await readInto(files, unread, root, '', root, new Set([root]));
  unread.sort((a, b) => (a.path < b.path ? -1 : 1));
  return Object.assign(files, { unread });
}

async function readInto(
  files: Map<string, Uint8Array>,
  unread: Unread[],
  root: string,
  folder: string,
  at: string,
  visited: ReadonlySet<string>,
): Promise<void> {
  const entries = await readdir(at, { withFileTypes: true }).catch(() => null);
  if (entries === null) {
    unread.push({ path: folder, reason: 'not readable' });
    return;
  }
  for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const { name } = entry;
    if (name.startsWith('.')) continue;
    const path = folder === '' ? name : `${folder}/${name}`;
    // Only a link can lead elsewhere: a file is where it stands.
    const real = entry.isFile() ? join(at, name) : await realpath(join(at, name)).catch(() => null);
    const found = real === null ? null : await stat(real).catch(() => null);
    if (real === null || found === null) unread.push({ path, reason: 'not readable' });
    else if (real !== root && !real.startsWith(root + sep))
      unread.push({ path, reason: 'a link that leaves the folder' });
    else if (found.isDirectory() && /\.(csv|yaml|mdx)$/.test(name)) {
      unread.push({ path, reason: 'not a regular file' });
    } else if (found.isDirectory()) {
      if (!visited.has(real)) await readInto(files, unread, root, path, real, new Set([...visited, real]));
    } else if (!found.isFile()) unread.push({ path, reason: 'not a regular file' });
    else if (found.size > largestFile) unread.push({ path, reason: 'too large' });
    else {
      const bytes = await readFile(real).catch(() => null);
      if (bytes === null) unread.push({ path, reason: 'not readable' });
      else files.set(path, bytes);
    }
  }
}
