/** The build of generated trials against a bare Astro build of as many pages. */
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from '../../src/commands/folders.ts';
import { writeBareSite } from './bare-site.ts';
import type { Bench, BenchResult } from './bench.ts';
import { timedProcess } from './timed-process.ts';
import { writeTrialFolders } from './trial-folders.ts';

const SEED = 20_250;
const sizes = [10, 100, 1000];
const MOST_RATIO = 4;

export const bench: Bench = {
  name: 'Build: generated trials of 100 plants, against a bare Astro build of as many pages with a table of 100 rows',
  run,
};

async function run({ quick }: { quick: boolean }): Promise<BenchResult> {
  const folder = await mkdtemp(join(tmpdir(), 'tankside-bench-'));
  const rows: {
    trials: number;
    pages: number;
    'build s': number;
    'baseline s': number;
    ratio: number;
    'ms a trial': number;
  }[] = [];
  try {
    for (const count of quick ? sizes.slice(0, 2) : sizes) {
      const { seconds: ours, pages } = await ourBuild(join(folder, `ours-${count}`), count);
      const bare = await bareBuild(join(folder, `bare-${count}`), pages);
      rows.push({
        trials: count,
        pages,
        'build s': ours,
        'baseline s': bare,
        ratio: ours / bare,
        'ms a trial': (1000 * ours) / count,
      });
    }
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
  const [hundred, thousand] = [100, 1000].map((count) => rows.find(({ trials }) => trials === count));
  const misses: string[] = [];
  if (thousand && thousand.ratio > MOST_RATIO) {
    misses.push(
      `the build of 1000 trials takes ${thousand.ratio.toFixed(1)} times the baseline, over ${MOST_RATIO}.`,
    );
  }
  if (hundred && thousand && thousand['ms a trial'] > hundred['ms a trial']) {
    misses.push('the time for each trial grows from 100 to 1000 trials.');
  }
  return { rows, misses };
}

async function ourBuild(folder: string, count: number): Promise<{ seconds: number; pages: number }> {
  const content = join(folder, 'content');
  const out = join(folder, 'dist');
  await writeTrialFolders(content, count, SEED);
  const args = [join(root, 'src', 'commands', 'tankside.ts'), 'build'];
  const seconds = await leastOfThree(() =>
    timedProcess(args, root, { TANKSIDE_CONTENT: content, TANKSIDE_OUT: out }),
  );
  await demand(out, count);
  return { seconds, pages: await pagesOf(out) };
}

/** Longer than this is measured once: what else the machine does for a moment no longer tells. */
const LONG = 10;

/** The least seconds of three runs, ours and the baseline alike: a short one is easily doubled by a neighbour. */
async function leastOfThree(run: () => Promise<number>): Promise<number> {
  const first = await run();
  return first > LONG ? first : Math.min(first, await run(), await run());
}

/** Every page of a site: a trial has one of its own, and one of its data. */
async function pagesOf(dist: string): Promise<number> {
  const names = await readdir(dist, { recursive: true });
  return names.filter((name) => name.endsWith('.html')).length;
}

async function bareBuild(folder: string, count: number): Promise<number> {
  await writeBareSite(folder, count);
  const args = [join(root, 'node_modules', 'astro', 'bin', 'astro.mjs'), 'build'];
  const seconds = await leastOfThree(() => timedProcess(args, folder, {}));
  await demand(join(folder, 'dist'), count);
  return seconds;
}

/** A build that wrote fewer pages than asked has not been measured. */
async function demand(dist: string, count: number): Promise<void> {
  const pages = (await readdir(join(dist, 'trials'))).filter((name) => name.startsWith('generated-'));
  if (pages.length !== count) throw new Error(`${dist} holds ${pages.length} trials, not ${count}`);
}
