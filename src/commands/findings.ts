/** `findings`: prints a trial's findings.json, and its problems on standard error. */
import { computeFindings } from '../compute/findings.ts';
import { report } from './check.ts';
import { folderArgument } from './folder-argument.ts';
import { loadTrial } from './load-content.ts';

export async function run(args: string[]): Promise<number> {
  const { trial, problems } = await loadTrial(folderArgument(args));
  if (problems.length > 0) process.stderr.write(report(problems));
  if (trial === null) return 1;
  if (trial.metadata.status !== 'finished') {
    process.stderr.write(`The trial is ${trial.metadata.status}: it has no findings until it is finished.\n`);
    return 1;
  }
  process.stdout.write(`${JSON.stringify(computeFindings(trial), null, 2)}\n`);
  return 0;
}
