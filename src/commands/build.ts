/** `build`: checks every trial, computes, and writes the site; nothing is published where a trial has an error. */
import { cp, mkdir, readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join, relative } from 'node:path';
import { parseArgs } from 'node:util';
import { build as buildPages } from 'astro';
import { formatNumber } from '../compute/format/format-number.ts';
import { hasError } from '../model/problem.ts';
import type { Library } from '../model/library.ts';
import { say } from '../model/say.ts';
import type { PublishedFile } from '../publish/files.ts';
import { provideLibrary, provideSearch } from '../publish/library.ts';
import { listTrials } from '../read/folder.ts';
import { report } from './check.ts';
import { type Crew, crewFor } from './crew/crew.ts';
import { datasetsMeanwhile } from './crew/datasets-meanwhile.ts';
import { contentFolder, outputFolder, presentContentFolder, root } from './folders.ts';
import { foreignOutput } from './foreign-output.ts';
import { libraryOf } from './library-of.ts';
import { loadContent } from './load-content.ts';
import { makeOfflineWorker } from './make-offline-worker.ts';
import { makePhotographs } from './make-photographs.ts';
import { makeSearch } from './make-search.ts';
import { printSheets } from './print-sheets.ts';
import { progressOf } from './progress.ts';
import { writeAsSite } from './write-as-site.ts';
import { writeFiles } from './write-files.ts';

export async function run(args: string[]): Promise<number> {
  parseArgs({ args, options: {} });
  const content = presentContentFolder();
  await writeAsSite(content);
  const foreign = foreignOutput(outputFolder(), [content, root]);
  if (foreign !== null) {
    process.stderr.write(`${say('Nothing was published: {why}', { why: foreign })}\n`);
    return 1;
  }
  const started = performance.now();
  const crew = crewFor((await listTrials(content)).length);
  try {
    return await build(crew, started);
  } finally {
    await crew.dismiss();
  }
}

async function build(crew: Crew, started: number): Promise<number> {
  const content = await loadContent(
    contentFolder(),
    progressOf(() => say('Checking')),
    crew,
  );
  process.stderr.write(report(content.problems));
  if (hasError(content.problems) || content.site === null) {
    process.stderr.write(`${say('Nothing was published: mend the errors above, then build again.')}\n`);
    return 1;
  }
  const library = libraryOf(content);
  const photographs = await makePhotographs(library);
  if (photographs.problems.length > 0) {
    process.stderr.write(`${report(photographs.problems)}${say('Nothing was published.')}\n`);
    return 1;
  }
  const search = await makeSearch(library);
  if (search.missing !== null) process.stderr.write(`${search.missing}\n`);
  provideSearch(search.missing);
  const output = outputFolder();
  const startedIn = process.cwd();
  await replaceFolder(output, (next) =>
    writeSite(library, [...photographs.files, ...search.files], next, crew),
  );
  const done = {
    count: library.trials.length,
    seconds: formatNumber((performance.now() - started) / 1000, 1),
    folder: relative(startedIn, output) || output,
  };
  process.stderr.write(`${say('Built {count} trials in {seconds} s into {folder}', done)}\n`);
  return 0;
}

async function writeSite(
  library: Library,
  beside: readonly PublishedFile[],
  output: string,
  crew: Crew,
): Promise<void> {
  provideLibrary(() => Promise.resolve(library));
  const { origin, pathname } = new URL(library.site.url);
  // Astro looks for a bundle's place from the folder the command was started in.
  process.chdir(root);
  await buildPages({
    root,
    outDir: output,
    site: origin,
    base: pathname,
    logLevel: 'warn',
    integrations: [datasetsMeanwhile(crew, library, output)],
  });
  writeFiles(library, beside, output);
  await printSheets(library, output);
  await makeOfflineWorker(library, output);
}

/**
 * Writes a folder and puts it in the place of the old one only when it is whole, so that a build that fails
 * leaves the last good site as it was. It is written inside the program's folder, each build to its own:
 * Astro keeps its pages' bundle beside it, and only there does the bundle find the packages.
 */
async function replaceFolder(folder: string, write: (next: string) => Promise<void>): Promise<void> {
  const own = join(root, '.tankside', `build-${process.pid}`);
  await clearBrokenOff();
  const beside = (word: string) => join(dirname(folder), `.${basename(folder)}-${word}-${process.pid}`);
  const [next, last] = [beside('next'), beside('last')];
  await mkdir(dirname(folder), { recursive: true });
  try {
    await write(own);
    await move(own, next);
    await rename(folder, last).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== 'ENOENT') throw error;
    });
    await rename(next, folder);
  } finally {
    for (const path of [own, next, last])
      await rm(path, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}

/** Takes away what builds left that were broken off (by Ctrl-C, say): theirs is a process that is no more. */
async function clearBrokenOff(): Promise<void> {
  for (const name of await readdir(join(root, '.tankside')).catch(() => [])) {
    const [, id] = /^build-(\d+)$/.exec(name) ?? [];
    if (id === undefined || isRunning(Number(id))) continue;
    await rm(join(root, '.tankside', name), { recursive: true, force: true });
  }
}

function isRunning(id: number): boolean {
  try {
    return process.kill(id, 0);
  } catch (error) {
    // One that may not be asked is another user's.
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

/** Moves a folder, by copying it where it has to go to another disk. */
async function move(from: string, to: string): Promise<void> {
  await rename(from, to).catch(async (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EXDEV') throw error;
    await cp(from, to, { recursive: true });
  });
}
