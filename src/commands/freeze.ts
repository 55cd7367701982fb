import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { isRawFile, sumsFile } from '../check/frozen-versions.ts';
import { sha256 } from '../publish/sha256.ts';

/**
 * Writes the raw files of a trial into `versions/<version>/` with their sums, whole or not at all.
 *
 * @returns the names of the frozen files
 */
export async function freeze(
  folder: string,
  version: string,
  files: ReadonlyMap<string, Uint8Array>,
): Promise<string[]> {
  const names = [...files.keys()].filter(isRawFile).sort();
  const sums = names.map((name) => `${sha256(files.get(name)!)}  ${name}\n`).join('');
  // A name that begins with a dot is passed over by every reader of the folder.
  const begun = join(folder, 'versions', `.${version}`);
  await rm(begun, { recursive: true, force: true });
  await mkdir(begun, { recursive: true });
  for (const name of names) await writeFile(join(begun, name), files.get(name)!);
  await writeFile(join(begun, sumsFile), sums);
  await rename(begun, join(folder, 'versions', version));
  return [...names, sumsFile];
}

/** Replaces a file whole, so that a fault midway leaves the old one. */
export async function replaceFile(path: string, bytes: Uint8Array): Promise<void> {
  const next = `${path}.next`;
  await writeFile(next, bytes);
  await rename(next, path);
}
