/** `build`: checks every trial, computes, and writes the site; nothing is published where a trial has an error. */
import { mkdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join, relative } from 'node:path';
import { parseArgs } from 'node:util';
import { build as buildPages } from 'astro';
import { hasError } from '../model/problem.ts';
import type { Library } from '../model/library.ts';
import { provideLibrary } from '../publish/library.ts';
import { report } from './check.ts';
import { contentFolder, outputFolder, root } from './folders.ts';
import { libraryOf } from './library-of.ts';
import { loadContent } from './load-content.ts';
import { writeFiles } from './write-files.ts';

export async function run(args: string[]): Promise<number> {
  parseArgs({ args, options: {} });
  const started = performance.now();
  const content = await loadContent(contentFolder());
  process.stderr.write(report(content.problems));
  if (hasError(content.problems) || content.site === null) {
    process.stderr.write('Nothing was published: mend the errors above, then build again.\n');
    return 1;
  }
  const library = libraryOf(content);
  const output = outputFolder();
  await replaceFolder(output, (next) => writeSite(library, next));
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  process.stderr.write(
    `Built ${library.trials.length} trials in ${seconds} s into ${relative(process.cwd(), output) || output}\n`,
  );
  return 0;
}

async function writeSite(library: Library, output: string): Promise<void> {
  provideLibrary(() => Promise.resolve(library));
  const { origin, pathname } = new URL(library.site.url);
  await buildPages({ root, outDir: output, site: origin, base: pathname, logLevel: 'warn' });
  await writeFiles(library, output);
}

/**
 * Writes a folder beside the old one and puts it in its place only when it is whole, so that a build that
 * fails leaves the last good site as it was.
 */
async function replaceFolder(folder: string, write: (next: string) => Promise<void>): Promise<void> {
  const beside = (word: string) => join(dirname(folder), `.${basename(folder)}-${word}-${process.pid}`);
  const next = beside('next');
  const last = beside('last');
  await mkdir(dirname(folder), { recursive: true });
  try {
    await write(next);
    await rename(folder, last).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'ENOENT') throw error;
    });
    await rename(next, folder);
  } finally {
    await rm(next, { recursive: true, force: true });
    await rm(last, { recursive: true, force: true });
  }
}
