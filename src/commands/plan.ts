/** `plan`: what arrangements can answer a question, and the trial folder of one of them. */
import { randomInt } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { siteFindings } from '../compute/site-findings.ts';
import { newestFirst } from '../compute/newest-first.ts';
import { betweenProposals, proposalSentences } from '../plan/proposal-words.ts';
import { proposals } from '../plan/proposals.ts';
import { report } from './check.ts';
import { contentFolder } from './folders.ts';
import { loadContent, today } from './load-content.ts';
import { planOptions } from './plan-options.ts';
import { wrongUse } from './usage.ts';

export async function run(args: string[]): Promise<number> {
  const content = await loadContent(contentFolder());
  const trials = [...content.trials].sort(newestFirst);
  const licence = content.site?.licence ?? 'CC-BY-4.0';
  const { cultivars } = content;
  const { request, folder, choose, seed, variation, like } = planOptions(args, {
    trials,
    cultivars,
    licence,
  });
  const target = folder === null ? null : resolve(folder);
  if (target !== null && existsSync(target))
    throw wrongUse(`"${folder!.slice(0, 200)}" is there already; name a new folder.`);
  const context = { cultivars, others: siteFindings(trials), today: today(), variation };
  const made = proposals(request, seed ?? randomInt(2 ** 32), context);
  const { stdout, stderr } = process;
  made.proposals.forEach((proposal, index) => {
    const { heading, sentences } = proposalSentences(proposal, cultivars);
    stdout.write(`${index + 1}. ${heading}\n${sentences.map((sentence) => `   ${sentence}\n`).join('')}`);
  });
  const between = betweenProposals(made.proposals, variation !== null);
  if (between !== null) stdout.write(`${between}\n`);
  for (const { reason } of made.refusals) stdout.write(`No: ${reason}.\n`);
  if (made.problems.length > 0) stderr.write(report(made.problems));
  if (made.proposals.length === 0) {
    stderr.write('Nothing was proposed that can be laid out.\n');
    return 1;
  }
  if (target === null) return 0;
  const chosen = made.proposals[choose - 1];
  if (chosen === undefined)
    throw wrongUse(`--choose is a number from 1 to ${made.proposals.length}; found ${choose}.`);
  await mkdir(target, { recursive: true });
  for (const [name, text] of chosen.files) await writeFile(join(target, name), text);
  stdout.write(`Proposal ${choose} is written to ${folder!}.\n`);
  if (like !== null) stdout.write(`What was not said here is as in ${like.id}: look through trial.yaml.\n`);
  return 0;
}
