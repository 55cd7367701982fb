/**
 * The check of a trial of 200,000 harvest rows, from its files' bytes to the trial, against PapaParse alone reading
 * harvest.csv whole; and the check of 1,000 trial folders as a command.
 */
import { spawn } from 'node:child_process';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { root } from '../../src/commands/folders.ts';
import type { Bench, BenchResult } from './bench.ts';
import { largeTrial } from './large-trial.ts';
import { writeTrialFolders } from './trial-folders.ts';

const SEED = 20_251;
const MOST_SECONDS = 3;
const MOST_TIMES = 4;
const MOST_MEGABYTES = 1000;
const MOST_SECONDS_FOLDERS = 20;

export const bench: Bench = {
  name: 'Check: 200,000 harvest rows, against PapaParse alone on the same file; 1,000 trial folders',
  run,
};

async function run({ quick }: { quick: boolean }): Promise<BenchResult> {
  const rows = quick ? 20_000 : 200_000;
  const folders = quick ? 100 : 1000;
  const folder = await mkdtemp(join(tmpdir(), 'tankside-bench-'));
  try {
    const trial = join(folder, 'trials', 'large-trial');
    await mkdir(trial, { recursive: true });
    for (const [name, text] of largeTrial(rows, SEED)) await writeFile(join(trial, name), text);
    const measured = await measureRows(trial);
    const content = join(folder, 'content');
    await writeTrialFolders(content, folders, SEED);
    const start = performance.now();
    const { code } = await node([join(root, 'src', 'commands', 'tankside.ts'), 'check', content]);
    if (code !== 0) throw new Error('the check of the generated folders found an error');
    return result(rows, measured, folders, (performance.now() - start) / 1000);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Seconds, and megabytes at the highest. */
interface Measured {
  parse: number;
  stepwise: number;
  check: number;
  megabytes: number;
}

/** Measured in a process of its own, so that the memory is that of the check and of nothing else. */
async function measureRows(trial: string): Promise<Measured> {
  const { stdout } = await node([join(root, 'test', 'bench', 'check-rows.ts'), trial]);
  return JSON.parse(stdout) as Measured;
}

function result(rows: number, measured: Measured, folders: number, seconds: number): BenchResult {
  const { parse, stepwise, check, megabytes } = measured;
  const misses: string[] = [];
  if (check > MOST_SECONDS)
    misses.push(`the check of ${rows} rows takes ${check.toFixed(2)} s, over ${MOST_SECONDS}.`);
  if (check / parse > MOST_TIMES)
    misses.push(
      `the check takes ${(check / parse).toFixed(1)} times as long as PapaParse, over ${MOST_TIMES}.`,
    );
  if (megabytes > MOST_MEGABYTES)
    misses.push(`the check takes ${megabytes.toFixed(0)} MB, over ${MOST_MEGABYTES}.`);
  if (seconds > MOST_SECONDS_FOLDERS)
    misses.push(
      `the check of ${folders} folders takes ${seconds.toFixed(1)} s, over ${MOST_SECONDS_FOLDERS}.`,
    );
  const line = { what: `${rows} rows`, 'check s': check, 'PapaParse s': parse, times: check / parse };
  return {
    rows: [
      { ...line, 'PapaParse stepwise s': stepwise, 'peak MB': megabytes },
      { what: `${folders} folders`, 'check s': seconds },
    ],
    misses,
  };
}

function node(args: string[]): Promise<{ code: number; stdout: string }> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] });
    let stdout = '';
    child.stdout.setEncoding('utf8').on('data', (piece: string) => (stdout += piece));
    child.on('error', fail);
    child.on('close', (code) => done({ code: code ?? 1, stdout }));
  });
}
