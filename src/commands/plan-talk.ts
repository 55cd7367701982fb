/** Planning by questions: the answers, what they allow, which of it, and where it is written. */
import { existsSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { say } from '../model/say.ts';
import type { PlanFields } from '../plan/plan-fields.ts';
import { proposalLines } from '../plan/proposal-words.ts';
import { type Proposal, proposals } from '../plan/proposals.ts';
import { readPlan } from '../plan/read-plan.ts';
import type { PlanFacts } from '../publish/plan-facts.ts';
import { fieldsOfOptions } from './plan-option-fields.ts';
import { askFields } from './plan-prompts.ts';
import { askText, askYes, type Talk } from './talk.ts';
import { wrongUse } from './usage.ts';

/** What planning needs of the world. */
export interface PlanWorld {
  facts: PlanFacts;
  /** The folder that trials lie in. */
  trials: string;
  /** Year-month-day. */
  today: string;
  drawSeed: () => number;
  write: (proposal: Proposal, target: string) => Promise<void>;
}

/** @returns the exit code: 0 where a folder was written or none was wanted, 1 where nothing can be laid out */
export async function planByPrompts(talk: Talk, args: string[], world: PlanWorld): Promise<number> {
  const { facts } = world;
  const given = fieldsOfOptions(args);
  const wrongFolder = given.folder === null ? null : faultOfFolder(given.folder);
  if (wrongFolder !== null) throw wrongUse(wrongFolder);
  talk.tell(
    say(
      'An empty answer takes what stands in brackets, and - empties it. Ctrl-C ends it, and nothing is written.',
    ),
  );
  let fields = { ...startOf(world), ...given.fields };
  for (;;) {
    fields = await askFields(talk, facts, fields);
    const made = await proposed(talk, fields, given.seed, world);
    if (made.length > 0) return choose(talk, made, given.folder, world);
    talk.tell(say('Nothing can be proposed that answers the question; the reasons stand above.'));
    if (!(await askYes(talk, say('Go through the questions again, with your answers in brackets'), true)))
      return 1;
  }
}

/** What the page has in its fields before anything is typed. */
function startOf({ facts, today }: PlanWorld): PlanFields {
  return {
    question: '',
    crop: facts.crops[0]?.name ?? '',
    season: say('spring'),
    year: today.slice(0, 4),
    site: facts.site?.name ?? '',
    setting: facts.site?.setting ?? '',
    person: '',
    factors: [{ factor: say('Cultivar'), levels: '', bound: '' }],
    hasCheck: true,
    containers: '4',
    rows: '3',
    columns: '4',
    grids: '',
    kind: '',
    border: '0',
    seedlings: '',
    sizes: '',
    allot: ['position'],
    plotRows: '3',
    plotColumns: '1',
    records: [],
    tasters: '',
    variation: '',
    unreplicated: false,
  };
}

/** Tells what can be laid out and what cannot; a grower who insists is asked to say so. */
async function proposed(
  talk: Talk,
  fields: PlanFields,
  given: number | null,
  world: Pick<PlanWorld, 'facts' | 'today' | 'drawSeed'>,
): Promise<readonly Proposal[]> {
  const { facts, today, drawSeed } = world;
  const read = readPlan(fields, facts);
  if (!('request' in read)) {
    // Each field was held against the same reading, so that this is only what none of them could mend.
    for (const { message } of read) talk.tell(message);
    return [];
  }
  const { request, variation } = read;
  const known = facts.crops.find(({ crop }) => crop.name === request.crop.name);
  const context = {
    cultivars: facts.cultivars,
    others: [],
    today,
    variation: variation ?? known?.variation ?? facts.otherwise,
  };
  const made = proposals(request, given ?? drawSeed(), context);
  for (const line of proposalLines(made, facts.cultivars, variation !== null)) talk.tell(line);
  for (const { message } of made.problems) talk.tell(message);
  const canInsist = made.proposals.length === 0 && made.refusals.some(({ insist }) => insist);
  if (!canInsist || !(await askYes(talk, insisting(), false))) return made.proposals;
  return proposed(talk, { ...fields, unreplicated: true }, given, world);
}

const insisting = (): string =>
  say('I insist on one container for each treatment, and know that the trial then tests nothing');

/** Which of them, and where. */
async function choose(
  talk: Talk,
  made: readonly Proposal[],
  given: string | null,
  { trials, write }: PlanWorld,
): Promise<number> {
  const proposal = await whichOf(talk, made);
  if (proposal === null) return 0;
  for (let asked = given; ; asked = null) {
    const folder =
      asked ?? (await askText(talk, say('The folder to write it to'), join(trials, proposal.trial.id)));
    const fault = faultOfFolder(folder);
    if (fault !== null) {
      talk.tell(`  ${fault}`);
      continue;
    }
    await write(proposal, resolve(folder));
    talk.tell(say('It is written to {folder}.', { folder }));
    talk.tell(say('Look through its trial.yaml; from now on `check` holds it to its lots.'));
    return 0;
  }
}

async function whichOf(talk: Talk, made: readonly Proposal[]): Promise<Proposal | null> {
  for (;;) {
    const label = say('Which one is written (1 to {count}, 0: none)', { count: made.length });
    const number = Number(await askText(talk, label, '1'));
    if (number === 0) return null;
    const chosen = made[number - 1];
    if (chosen !== undefined) return chosen;
    talk.tell(`  ${say('Write a whole number from {least} to {most}.', { least: 0, most: made.length })}`);
  }
}

function faultOfFolder(folder: string): string | null {
  if (existsSync(resolve(folder)))
    return say('“{folder}” is there already; name a new folder.', { folder: folder.slice(0, 200) });
  return /^[a-z0-9-]{3,64}$/.test(basename(resolve(folder)))
    ? null
    : say(
        'The folder’s name is part of the trial’s address: 3 to 64 lower-case letters, digits and hyphens.',
      );
}
