/** Writes the published files of every dataset beside the pages. */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join, resolve, sep } from 'node:path';
import type { Library } from '../model/library.ts';
import { type PublishedFile, publishedFiles, siteFiles } from '../publish/files.ts';
import { type Progress, progressOf } from './progress.ts';

/** Writes every published file below the output folder, and those given beside them (photographs, the search). */
export async function writeFiles(
  library: Library,
  beside: readonly PublishedFile[],
  output: string,
  progress: Progress = progressOf('Publishing'),
): Promise<void> {
  await writeAll(output, [...siteFiles(library), ...beside]);
  for (const [index, item] of library.trials.entries()) {
    const files = item.findings === null ? [] : publishedFiles(item, library);
    await writeAll(join(output, 'data', item.trial.id), files);
    progress.done(index + 1, library.trials.length);
  }
  progress.end();
}

/** Writes files below a folder, all at once; none may leave it. */
async function writeAll(folder: string, files: readonly PublishedFile[]): Promise<void> {
  const paths = files.map(({ name }) => {
    const path = resolve(join(folder, name));
    if (!path.startsWith(resolve(folder) + sep)) throw new Error(`The file name "${name}" leaves its folder`);
    return path;
  });
  for (const each of new Set(paths.map(dirname))) await mkdir(each, { recursive: true });
  await Promise.all(files.map(({ bytes }, index) => writeFile(paths[index]!, bytes)));
}
