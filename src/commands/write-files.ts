/** Writes the published files of every dataset beside the pages. */
import { join } from 'node:path';
import type { Library } from '../model/library.ts';
import { say } from '../model/say.ts';
import { isWritten, type PublishedFile, publishedFiles, siteFiles } from '../publish/files.ts';
import { type Progress, progressOf } from './progress.ts';
import { writeAll } from './write-all.ts';

/**
 * Writes every published file below the output folder that is not written yet, and those given beside them
 * (photographs, the search).
 */
export function writeFiles(
  library: Library,
  beside: readonly PublishedFile[],
  output: string,
  progress: Progress = progressOf(() => say('Publishing')),
): void {
  writeAll(output, [...siteFiles(library), ...beside]);
  for (const [index, item] of library.trials.entries()) {
    if (isWritten(item)) continue;
    const files = item.findings === null ? [] : publishedFiles(item, library);
    writeAll(join(output, 'data', item.trial.id), files);
    progress.done(index + 1, library.trials.length);
  }
  progress.end();
}
