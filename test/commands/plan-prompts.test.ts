/** The prompts of `plan`, answered as a grower would: by lines, some of them wrong. */
import { PassThrough } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { planByPrompts, type PlanWorld } from '../../src/commands/plan-talk.ts';
import { answersEnded, type Talk, talkOver } from '../../src/commands/talk.ts';
import { planQuestions } from '../../src/plan/plan-fields.ts';
import type { Proposal } from '../../src/plan/proposals.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const facts: PlanWorld['facts'] = {
  cultivars: [
    { id: 'cobalt-wren', name: 'Cobalt Wren' },
    { id: 'slate-egret', name: 'Slate Egret' },
  ],
  crops: [],
  otherwise: { percent: 15, from: 'an assumption' },
  site: { name: 'Fernhollow', setting: 'rain shelter' },
  licence: 'CC0-1.0',
};

interface Done {
  code: number;
  told: string;
  written: Map<string, Proposal>;
  left: number;
}

/** Answers in their order; every question asked and everything told is kept. */
async function answered(answers: readonly string[], args: string[] = []): Promise<Done> {
  const left = [...answers];
  const told: string[] = [];
  const written = new Map<string, Proposal>();
  const talk: Talk = {
    ask: (prompt) => {
      told.push(prompt);
      return Promise.resolve(left.shift() ?? null);
    },
    tell: (text) => {
      told.push(text);
    },
    close: () => undefined,
  };
  const code = await planByPrompts(talk, args, {
    facts,
    trials: await temporaryFolder({ 'lettuce-spring-2027/trial.yaml': 'title: taken' }),
    today: '2026-11-25',
    drawSeed: () => 8812,
    write: (proposal, target) => {
      written.set(target, proposal);
      return Promise.resolve();
    },
  });
  return { code, told: told.join('\n'), written, left: left.length };
}

/** A line for each question, in the order in which they are asked. */
const lettuce = {
  question: ['Does the newcomer match the check?'],
  crop: ['Lettuce'],
  season: [''],
  year: ['2027'],
  site: [''],
  setting: ['4'],
  person: ['Imke Farrant'],
  factor: [''],
  levels: ['Cobalt Wren', 'Slate Egret', ''],
  bound: [''],
  hasCheck: [''],
  another: [''],
  grids: [''],
  containers: [''],
  rows: ['3'],
  columns: ['2'],
  kind: ['tray'],
  border: [''],
  seedlings: ['30'],
  sizes: [''],
  allot: [''],
  records: [''],
  variation: [''],
};
const linesOf = (change: Partial<Record<keyof typeof lettuce, string[]>> = {}) =>
  Object.values({ ...lettuce, ...change }).flat();

describe('The prompts', () => {
  test('ask what the page asks, in its words, and write the proposal that is chosen', async () => {
    const { code, told, written, left } = await answered([...linesOf(), '1', 'plans/spring-2027']);
    expect({ code, left }).toEqual({ code: 0, left: 0 });
    const asked = planQuestions();
    const notAsked = [asked.plotRows, asked.plotColumns, asked.unreplicated, asked.seed, asked.tasters];
    for (const question of Object.values(asked))
      expect([question, told.includes(question)]).toEqual([question, !notAsked.includes(question)]);
    // 4 containers of 6 positions, 2 treatments: 24 less the mean, 3 between blocks and 1 between treatments.
    expect(told).toMatch(
      /1\. Randomised blocks, each container a block.*\n.*\n.*On 19 error degrees of freedom/,
    );
    const [[target, proposal]] = [...written] as [[string, Proposal]];
    expect(target).toMatch(/plans\/spring-2027$/);
    expect(proposal.trial.metadata).toMatchObject({
      status: 'planned',
      question: 'Does the newcomer match the check?',
      site: { name: 'Fernhollow', setting: 'greenhouse' },
      season: { name: 'spring', year: 2027 },
      design: { arrangement: 'randomised blocks', seed: 8812 },
    });
    expect(proposal.trial.metadata.containers[0]).toMatchObject({
      id: 'T1',
      kind: 'tray',
      rows: 3,
      columns: 2,
    });
    const files = new Map([...proposal.files].map(([name, text]) => [name, new TextEncoder().encode(text)]));
    const context = { cultivars: facts.cultivars, today: '2026-11-25', prefix: '' };
    expect(checkTrial('spring-2027', files, context).problems).toEqual([]);
  });

  test('ask again where an answer is not understood, saying what to write', async () => {
    const { code, told, left, written } = await answered([
      ...linesOf({
        question: ['Why', 'Does the newcomer match the check?'],
        year: ['soon', '2027'],
        setting: ['9', '2'],
        levels: ['Cobalt Wren', '', 'Cobalt Wren', 'Slate Egret', ''],
        grids: ['T1 broad', '', ''],
        rows: ['0', '3'],
        sizes: ['big', '', ''],
        hasCheck: ['perhaps', 'no'],
        records: ['3 5', ' , ', 'A, B'],
        variation: ['much', '12,5'],
      }),
      '7',
      '1',
      'Spring Lettuce',
      'plans/spring-2027',
    ]);
    expect({ code, left }).toEqual({ code: 0, left: 0 });
    for (const said of [
      'Write a little more, such as “Does the newcomer match the check?”.',
      'Write a whole number from 1800 to 2200.',
      '“9” is none of them; write a number from 1 to 5.',
      'Write at least two, each on a line of its own.',
      '“T1 broad” is not understood; write a name, then rows x columns',
      'Write a whole number from 1 to 40.',
      '“big” is no size',
      'Write yes or no.',
      'Write who tastes, such as “A, B, C”.',
      'Write a number above 0 and up to 200, such as 15.',
      'Write a whole number from 0 to 1.',
      '3 to 64 lower-case letters, digits and hyphens',
      '12.5% between units: as stated',
    ])
      expect(told).toContain(said);
    // What was not understood is not offered again.
    expect(told).not.toMatch(/\[(?:Why|soon|big|much|T1 broad)\]/);
    const [proposal] = [...written.values()];
    expect(proposal!.trial.metadata.factors![0]).not.toHaveProperty('check');
    expect(proposal!.trial.metadata.variables.map(({ id }) => id)).toEqual([
      'fresh_weight',
      'tip_burn',
      'taste_1',
      'taste_2',
    ]);
  });

  test('never write over a folder that is there, which the default may be', async () => {
    const { told, written } = await answered([...linesOf(), '1', '', 'plans/another-2027']);
    expect(told).toMatch(/“.*lettuce-spring-2027” is there already; name a new folder\./);
    expect([...written.keys()].map((target) => target.replace(/^.*\//, ''))).toEqual(['another-2027']);
  });

  test('plan several factors in differing containers: a split plot with what it cannot answer', async () => {
    const { code, told, written } = await answered([
      ...linesOf({
        levels: ['Cobalt Wren', 'Slate Egret', ''],
        another: ['Solution strength', '0.5', '1', '', '2', ''],
        grids: ['T1 2x4', 'T2 2x4', 'T3 2x3', 'T4 2x3', ''],
        containers: [],
        rows: [],
        columns: [],
        seedlings: [''],
      }),
      '',
      'plans/split-2027',
    ]);
    expect(code).toBe(0);
    expect(told).toContain('Split plot, lots drawn for containers, then for positions');
    expect(told).toContain('A container counts as one unit');
    expect([...written.values()][0]!.trial.metadata.containers.map(({ columns }) => columns)).toEqual([
      4, 4, 3, 3,
    ]);
  });

  test('refuse one container for each treatment, and go on only where the grower insists', async () => {
    const one = linesOf({
      bound: ['2'],
      grids: [''],
      containers: ['2'],
      seedlings: [''],
    });
    const refused = await answered([...one, 'no', 'no']);
    expect(refused.code).toBe(1);
    expect(refused.told).toContain('cannot tell the treatment from the container');
    expect(refused.written.size).toBe(0);
    const insisted = await answered([...one, 'yes', '1', 'plans/described-2027']);
    expect(insisted.code).toBe(0);
    expect([...insisted.written.values()][0]!.trial.metadata.design.arrangement).toBe('unreplicated');
  });

  test('go through the questions again where nothing can be proposed, the answers kept', async () => {
    const again = Object.values(lettuce).map(() => '');
    // The rows and seedlings are the 15th and 19th answers of the second round.
    again[14] = '4';
    const { code, told } = await answered([...linesOf({ seedlings: ['3'] }), 'yes', ...again, 'no']);
    expect(told).toContain('would take 24 seedlings, and there will be 3');
    expect(told).toContain('Imke Farrant]');
    expect(told).toContain('would take 32 seedlings, and there will be 3');
    expect(code).toBe(1);
  });

  test('begin from the options that were given', async () => {
    const options = [
      '--crop',
      'Basil',
      '--season',
      'summer 2028',
      '--factor',
      'strength=half,full@container',
    ];
    const containers = ['T1', 'T2', 'T3', 'T4'].flatMap((id) => ['--container', `${id}=2x2`]);
    const { code, told, written } = await answered(
      [
        'Is half strength enough here?',
        '',
        '',
        '',
        '',
        '',
        'Imke Farrant',
        '',
        '',
        '',
        'no',
        '',
        '',
        '',
        '',
        '',
        '',
        '',
        '',
        '',
        '',
      ],
      [...options, ...containers, '--seed', '7', 'plans/basil-2028'],
    );
    expect(told).toContain('Crop [Basil]');
    expect(code).toBe(0);
    const [[target, { trial }]] = [...written] as [[string, Proposal]];
    expect(target).toMatch(/basil-2028$/);
    expect(trial.metadata).toMatchObject({
      crop: { name: 'Basil' },
      season: { name: 'summer', year: 2028 },
      design: { arrangement: 'completely randomised', allotted: 'container' },
    });
  });

  test('end where the answers end, and write nothing', async () => {
    await expect(answered(linesOf().slice(0, 5))).rejects.toSatisfy(answersEnded);
  });
});

test('answers that are pasted before they are asked for are kept', async () => {
  const [input, output] = [new PassThrough(), new PassThrough()];
  const talk = talkOver(input, output);
  input.end('one\ntwo\n');
  expect([await talk.ask('first '), await talk.ask('second '), await talk.ask('third ')]).toEqual([
    'one',
    'two',
    null,
  ]);
  talk.close();
});
