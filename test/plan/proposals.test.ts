import { describe, expect, test } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { detectableDifference } from '../../src/statistics/power/detectable-difference.ts';
import { proposalSentences } from '../../src/plan/proposal-words.ts';
import { moreVariables, recordable } from '../../src/plan/more-variables.ts';
import { type PlanContext, proposals } from '../../src/plan/proposals.ts';
import { containers, levels, planOf } from './request.ts';

const context: PlanContext = { cultivars: null, others: [], today: '2026-11-25', variation: 12 };
const factors = [
  { id: 'strength', name: 'Strength', levels: levels('half', 'full') },
  { id: 'feed', name: 'Feed', levels: levels('one', 'two') },
];

describe.each([
  ['blocks', planOf()],
  [
    'plots in blocks',
    planOf({ allot: ['plot'], plot: { rows: 3, columns: 1 }, containers: containers(3, 3, 3) }),
  ],
  ['a Latin square within a border', planOf({ containers: containers(1, 5, 5), border: 1 })],
  ['a completely randomised trial', planOf({ containers: containers(1, 3, 4) })],
  ['containers', planOf({ allot: ['container'], containers: containers(6, 2, 2) })],
  ['a split plot', planOf({ factors, only: { strength: 'container' }, containers: containers(4, 2, 4, 2) })],
  [
    'everything that can be recorded',
    planOf({ variables: [...planOf().variables, ...moreVariables(recordable, ['A', 'B'])] }),
  ],
  [
    'one container for each treatment',
    planOf({ allot: ['container'], containers: containers(3, 2, 2), unreplicated: true }),
  ],
])('a plan of %s', (_, request) => {
  test('gives folders that pass the check, whatever the seed', () => {
    for (const seed of [0, 1, 2, 3, 8812]) {
      const made = proposals(request, seed, context);
      expect(made.problems).toEqual([]);
      expect(made.proposals.length).toBeGreaterThan(0);
      for (const { files, trial } of made.proposals) {
        const bytes = new Map([...files].map(([path, text]) => [path, new TextEncoder().encode(text)]));
        const checked = checkTrial(request.id, bytes, { cultivars: null, today: '2026-11-25', prefix: '' });
        expect(checked.problems).toEqual([]);
        expect(trial.metadata).toMatchObject({ status: 'planned', design: { lot: { method: 'lots-1' } } });
        expect(trial.harvest).toHaveLength(trial.positions.length);
        expect(trial.harvest.every(({ values }) => values['fresh_weight'] === null)).toBe(true);
      }
    }
  });
});

test('a proposal says its error degrees of freedom and the difference that they let be told', () => {
  const [proposal] = proposals(planOf(), 8812, context).proposals;
  const [term] = proposal?.analysis?.terms ?? [];
  // 48 positions, less the mean, 3 between blocks and 2 between treatments.
  expect(term?.errorDf).toBe(42);
  const expected = detectableDifference(
    { cvPercent: 12, treatments: 3, design: 'randomised blocks', errorDf: 42, alpha: 0.05, test: 't' },
    16,
    0.8,
  );
  expect(term?.detectablePercent).toBeCloseTo(expected, 9);
  const { heading, sentences } = proposalSentences(proposal!, []);
  expect(heading).toBe(
    'Randomised blocks, each container a block, lots drawn for positions (48 plants, seed 8812)',
  );
  expect(sentences.join(' ')).toContain(`a difference of ${Math.round(expected)}% of the mean`);
  expect(sentences.join(' ')).toContain('12.0% between units: as stated');
});

test('an unreplicated plan is marked so and tells nothing apart', () => {
  const request = planOf({ allot: ['container'], containers: containers(3, 2, 2), unreplicated: true });
  const [proposal] = proposals(request, 8812, context).proposals;
  expect(proposal?.trial.metadata.design.arrangement).toBe('unreplicated');
  expect(proposal?.analysis?.terms.map(({ detectablePercent }) => detectablePercent)).toEqual([null]);
  expect(proposalSentences(proposal!, []).sentences.join(' ')).toContain('marked unreplicated');
});

test('too few seedlings are refused with the number', () => {
  const made = proposals(planOf({ seedlings: 40 }), 1, context);
  expect(made.proposals).toEqual([]);
  expect(made.refusals[0]?.reason).toContain('would take 48 seedlings, and there will be 40');
});

test('seedlings graded by size are allotted to blocks, each block one grade', () => {
  const sizes = Array.from({ length: 50 }, (_, index) => (index * 37) % 50);
  const [proposal] = proposals(planOf({ sizes }), 8812, context).proposals;
  const [head, ...rows] = proposal!.files.get('seedlings.csv')!.trimEnd().split('\n');
  expect(head).toBe('container,row,column,seedling,size');
  expect(rows).toHaveLength(48);
  const grades = ['T1', 'T2', 'T3', 'T4'].map((container) => {
    const own = rows.filter((row) => row.startsWith(`${container},`)).map((row) => Number(row.split(',')[4]));
    return `${Math.min(...own)} to ${Math.max(...own)}`;
  });
  expect(grades.sort()).toEqual(['14 to 25', '2 to 13', '26 to 37', '38 to 49']);
  expect(rows.every((row) => sizes[Number(row.split(',')[3]) - 1] === Number(row.split(',')[4]))).toBe(true);
});

test('too few graded seedlings, or a seed too large for them, are refused', () => {
  const reasons = (sizes: number[], seed: number) =>
    proposals(planOf({ sizes }), seed, context).refusals.map(({ reason }) => reason);
  expect(reasons([1, 2, 3], 1)[0]).toBe('48 seedlings are needed, and there are 3');
  expect(reasons(Array<number>(48).fill(1), 2 ** 32)[0]).toContain('take a seed below 2^32');
});

test('a fault that no seed mends is a problem with its rule, not a hundred draws', () => {
  const made = proposals(planOf({ licence: 'mine' }), 1, context);
  expect(made.proposals).toEqual([]);
  expect(made.problems.map(({ rule }) => rule)).toEqual(['unknown-licence']);
});

test('a lot that by chance gives each tank one treatment is set aside for the next seed', () => {
  const request = planOf({
    factors: [{ id: 'feed', name: 'Feed', levels: levels('one', 'two') }],
    containers: containers(2, 1, 3),
  });
  const made = Array.from({ length: 40 }, (_, seed) => proposals(request, seed * 1000, context).proposals[0]);
  expect(made.every((one) => one !== undefined)).toBe(true);
  // 2 of the 20 ways to deal three and three over two tanks of three put each treatment into one tank.
  expect(made.filter((one) => one!.seed % 1000 !== 0).length).toBeGreaterThan(0);
  expect(made.filter((one) => one!.seed % 1000 !== 0).length).toBeLessThan(15);
});
