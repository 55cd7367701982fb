/** `findings`: prints a trial's findings.json, and its problems on standard error. */
import { resolve } from 'node:path';
import { computeFindings } from '../compute/findings.ts';
import { report } from './check.ts';
import { ownVariation } from '../compute/next-trial.ts';
import { siteFindings } from '../compute/site-findings.ts';
import type { Findings } from '../model/findings.ts';
import { say } from '../model/say.ts';
import type { Trial } from '../model/trial.ts';
import { folderArgument, kindOfFolder } from './folder-argument.ts';
import { loadContent, loadTrial } from './load-content.ts';

export async function run(args: string[]): Promise<number> {
  const folder = folderArgument(args);
  const { trial, problems } = await loadTrial(folder);
  if (problems.length > 0) process.stderr.write(report(problems));
  if (trial === null) return 1;
  if (trial.metadata.status !== 'finished') {
    const why =
      trial.metadata.status === 'planned'
        ? say('The trial is planned: it has no findings until it is finished.')
        : say('The trial is growing: it has no findings until it is finished.');
    process.stderr.write(`${why}\n`);
    return 1;
  }
  process.stdout.write(`${JSON.stringify(await findingsAsPublished(folder, trial), null, 2)}\n`);
  return 0;
}

/** A trial without an error of its own leans on the other trials of the content folder that it lies in. */
async function findingsAsPublished(folder: string, trial: Trial): Promise<Findings> {
  const findings = computeFindings(trial);
  const site = resolve(folder, '..', '..');
  if (ownVariation(trial, findings.inference) !== null || kindOfFolder(site) !== 'content') return findings;
  const { trials } = await loadContent(site);
  const all = siteFindings([trial, ...trials.filter(({ id }) => id !== trial.id)]);
  return all[0]?.findings ?? findings;
}
