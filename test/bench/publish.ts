/** What publishing every file of every dataset adds to a build, against the same build without them. */
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from '../../src/commands/folders.ts';
import type { Bench, BenchResult } from './bench.ts';
import { timedProcess } from './timed-process.ts';
import { writeTrialFolders } from './trial-folders.ts';

const SEED = 20_250;
const MOST_ADDED = 1.5;

export const bench: Bench = {
  name: 'Publishing: every file of every dataset, against the same build of the pages alone',
  run,
};

async function run({ quick }: { quick: boolean }): Promise<BenchResult> {
  const count = quick ? 100 : 1000;
  const folder = await mkdtemp(join(tmpdir(), 'tankside-bench-'));
  try {
    const content = join(folder, 'content');
    await writeTrialFolders(content, count, SEED);
    const build = async (name: string, pagesOnly: boolean) => {
      const out = join(folder, name);
      const env = {
        TANKSIDE_CONTENT: content,
        TANKSIDE_OUT: out,
        TANKSIDE_PAGES_ONLY: pagesOnly ? '1' : '0',
      };
      const args = [join(root, 'src', 'commands', 'tankside.ts'), 'build'];
      return { seconds: await timedProcess(args, root, env), files: await filesOf(out) };
    };
    const without = await build('without', true);
    const whole = await build('whole', false);
    if (without.files !== 1 || whole.files < 20)
      throw new Error(`a trial's data folder holds ${without.files} files without, ${whole.files} with`);
    const ratio = whole.seconds / without.seconds;
    const added = ratio - 1;
    const row = {
      trials: count,
      'pages alone s': without.seconds,
      'with all files s': whole.seconds,
      'times the pages': ratio,
      'added, in times the pages': added,
      'ms added a trial': (1000 * (whole.seconds - without.seconds)) / count,
    };
    const misses =
      added > MOST_ADDED
        ? [`publishing all files adds ${added.toFixed(2)} times the build without them, over ${MOST_ADDED}.`]
        : [];
    return { rows: [row], misses };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** How many files the first trial's data folder holds, its page among them. */
async function filesOf(dist: string): Promise<number> {
  return (await readdir(join(dist, 'data', 'generated-0001'))).length;
}
