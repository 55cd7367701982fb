/** Keeps what was gathered so that a fault midway leaves the last good copy: whole folders are put in place at once. */
import { mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** Names that begin with a dot are passed over by every reader. */
const next = '.next-';
const last = '.last-';

/** Writes a folder beside its place, then puts it there. */
export async function keepFolder(
  folder: string,
  files: ReadonlyMap<string, Uint8Array | string>,
): Promise<void> {
  const [parent, name] = [dirname(folder), basename(folder)];
  const [coming, going] = [join(parent, next + name), join(parent, last + name)];
  await rm(coming, { recursive: true, force: true });
  await mkdir(coming, { recursive: true });
  for (const [file, bytes] of files) await writeFile(join(coming, file), bytes);
  await rename(folder, going).catch(unlessAbsent);
  await rename(coming, folder);
  await rm(going, { recursive: true, force: true });
}

/** Puts right what a run that was broken off left: a copy that was being replaced comes back. */
export async function mendFolder(folder: string): Promise<void> {
  for (const name of await readdir(folder).catch(() => [])) {
    const path = join(folder, name);
    if (name.startsWith(last))
      await rename(path, join(folder, name.slice(last.length))).catch(() => undefined);
    if (name.startsWith(next) || name.startsWith(last)) await rm(path, { recursive: true, force: true });
  }
}

function unlessAbsent(error: NodeJS.ErrnoException): void {
  if (error.code !== 'ENOENT') throw error;
}
