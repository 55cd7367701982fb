/** Writes the published files of every dataset beside the pages. */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join, resolve, sep } from 'node:path';
import type { Library } from '../model/library.ts';
import { publishedFiles, siteFiles } from '../publish/files.ts';
import { type Progress, progressOf } from './progress.ts';

/** Writes every published file below the output folder. */
export async function writeFiles(
  library: Library,
  output: string,
  progress: Progress = progressOf('Publishing'),
): Promise<void> {
  for (const file of siteFiles(library)) await write(output, file.name, file.bytes);
  for (const [index, item] of library.trials.entries()) {
    const files = item.findings === null ? [] : publishedFiles(item, library);
    for (const file of files) await write(output, `data/${item.trial.id}/${file.name}`, file.bytes);
    progress.done(index + 1, library.trials.length);
  }
  progress.end();
}

async function write(output: string, name: string, bytes: Uint8Array): Promise<void> {
  const path = resolve(join(output, name));
  if (!path.startsWith(resolve(output) + sep)) throw new Error(`The file name "${name}" leaves its folder`);
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, bytes);
}
