import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join, resolve, sep } from 'node:path';
import type { PublishedFile } from '../publish/published-file.ts';

/** Writes files below a folder, all at once; none may leave it. */
export async function writeAll(folder: string, files: readonly PublishedFile[]): Promise<void> {
  const paths = files.map(({ name }) => {
    const path = resolve(join(folder, name));
    if (!path.startsWith(resolve(folder) + sep)) throw new Error(`The file name "${name}" leaves its folder`);
    return path;
  });
  for (const each of new Set(paths.map(dirname))) await mkdir(each, { recursive: true });
  await Promise.all(files.map(({ bytes }, index) => writeFile(paths[index]!, bytes)));
}
