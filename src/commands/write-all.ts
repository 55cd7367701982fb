import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve, sep } from 'node:path';
import type { PublishedFile } from '../publish/published-file.ts';

/**
 * Writes files below a folder; none may leave it. One after the other: many small files take half the time of
 * asking for all at once, and the threads share the work by trials.
 */
export function writeAll(folder: string, files: readonly PublishedFile[]): void {
  const paths = files.map(({ name }) => {
    const path = resolve(join(folder, name));
    if (!path.startsWith(resolve(folder) + sep)) throw new Error(`The file name "${name}" leaves its folder`);
    return path;
  });
  for (const each of new Set(paths.map(dirname))) mkdirSync(each, { recursive: true });
  for (const [index, { bytes }] of files.entries()) writeFileSync(paths[index]!, bytes);
}
