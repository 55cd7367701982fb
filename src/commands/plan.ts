/** `plan`: what arrangements can answer a question, and the trial folder of one of them. */
import { randomInt } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { siteFindings } from '../compute/site-findings.ts';
import { newestFirst } from '../compute/newest-first.ts';
import { say } from '../model/say.ts';
import { proposalLines } from '../plan/proposal-words.ts';
import { type Proposal, proposals } from '../plan/proposals.ts';
import { planFacts } from '../publish/plan-facts.ts';
import { report } from './check.ts';
import { contentFolder } from './folders.ts';
import { libraryOf } from './library-of.ts';
import { type CheckedContent, loadContent, today } from './load-content.ts';
import { lacksOptions, planOptions } from './plan-options.ts';
import { planByPrompts } from './plan-talk.ts';
import { answersEnded, talkOver } from './talk.ts';
import { wrongUse } from './usage.ts';

export async function run(args: string[]): Promise<number> {
  const { stdin, stdout } = process;
  const isAsked = stdin.isTTY && stdout.isTTY && lacksOptions(args);
  const content = await loadContent(contentFolder());
  return isAsked ? byPrompts(args, content) : byOptions(args, content);
}

/** On a terminal, where not everything is said in options, the rest is asked. */
async function byPrompts(args: string[], content: CheckedContent): Promise<number> {
  const talk = talkOver(process.stdin, process.stdout);
  try {
    return await planByPrompts(talk, args, {
      facts: planFacts(libraryOf(content)),
      trials: join(contentFolder(), 'trials'),
      today: today(),
      drawSeed: () => randomInt(2 ** 32),
      write: writeProposal,
    });
  } catch (error) {
    if (!answersEnded(error)) throw error;
    process.stderr.write(`\n${error.message}\n`);
    return 2;
  } finally {
    talk.close();
  }
}

async function byOptions(args: string[], content: CheckedContent): Promise<number> {
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
    throw wrongUse(say('"{folder}" is there already; name a new folder.', { folder: folder!.slice(0, 200) }));
  const context = { cultivars, others: siteFindings(trials), today: today(), variation };
  const made = proposals(request, seed ?? randomInt(2 ** 32), context);
  const { stdout, stderr } = process;
  for (const line of proposalLines(made, cultivars, variation !== null)) stdout.write(`${line}\n`);
  if (made.refusals.some(({ insist }) => insist)) stdout.write(`${say('To insist, add --unreplicated.')}\n`);
  if (made.problems.length > 0) stderr.write(report(made.problems));
  if (made.proposals.length === 0) {
    stderr.write(`${say('Nothing was proposed that can be laid out.')}\n`);
    return 1;
  }
  if (target === null) return 0;
  const chosen = made.proposals[choose - 1];
  if (chosen === undefined)
    throw wrongUse(
      say('--choose is a number from 1 to {most}; found {found}.', {
        most: made.proposals.length,
        found: choose,
      }),
    );
  await writeProposal(chosen, target);
  const written = { number: choose, folder: folder! };
  stdout.write(`${say('Proposal {number} is written to {folder}.', written)}\n`);
  if (like !== null)
    stdout.write(
      `${say('What was not said here is as in {id}: look through trial.yaml.', { id: like.id })}\n`,
    );
  return 0;
}

async function writeProposal({ files }: Proposal, target: string): Promise<void> {
  for (const [name, text] of files) {
    await mkdir(dirname(join(target, name)), { recursive: true });
    await writeFile(join(target, name), text);
  }
}
