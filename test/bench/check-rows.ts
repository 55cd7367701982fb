/**
 * Run as a process of its own with a trial's folder: measures the check of it, from the bytes on, and PapaParse alone
 * on harvest.csv, in turn and several times, and prints the shortest times: those least disturbed by what else the machine does.
 */
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import Papa from 'papaparse';
import { checkTrial } from '../../src/check/check-trial.ts';
import type { FolderFiles } from '../../src/read/folder-files.ts';
import { readTrialFolder } from '../../src/read/folder.ts';

const ROUNDS = 9;

if (process.argv[1] === fileURLToPath(import.meta.url)) await measure(process.argv[2]!);

async function measure(folder: string): Promise<void> {
  const files = await readTrialFolder(folder);
  const harvest = files.get('harvest.csv')!;
  const spent = { parse: [] as number[], stepwise: [] as number[], check: [] as number[] };
  for (let round = 0; round < ROUNDS; round += 1) {
    spent.parse.push(seconds(() => Papa.parse(new TextDecoder().decode(harvest)).data.length));
    spent.stepwise.push(seconds(() => parseStepwise(harvest)));
    spent.check.push(seconds(() => checkOnce(files)));
  }
  const [parse, stepwise, check] = [spent.parse, spent.stepwise, spent.check].map((all) => Math.min(...all));
  const megabytes = process.resourceUsage().maxRSS / 1000;
  process.stdout.write(JSON.stringify({ parse, stepwise, check, megabytes }));
}

function parseStepwise(harvest: Uint8Array): number {
  let rows = 0;
  Papa.parse(new TextDecoder().decode(harvest), { step: () => (rows += 1) });
  return rows;
}

function checkOnce(files: FolderFiles): number {
  const { trial, problems } = checkTrial('large-trial', files, {
    cultivars: null,
    today: '2026-11-25',
    prefix: '',
  });
  if (trial === null) throw new Error(`the generated trial is faulty: ${problems[0]?.message ?? ''}`);
  return trial.harvest.length;
}

function seconds(work: () => number): number {
  const start = performance.now();
  if (work() === 0) throw new Error('nothing was read');
  return (performance.now() - start) / 1000;
}
