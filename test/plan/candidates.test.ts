import { expect, test } from 'vitest';
import { candidatesOf } from '../../src/plan/candidates.ts';
import { containers, levels, planOf } from './request.ts';

const strengthAndCultivar = [
  { id: 'strength', name: 'Strength', levels: levels('half', 'full') },
  { id: 'cultivar', name: 'Cultivar', levels: levels('a', 'b') },
];
const told = (...change: Parameters<typeof planOf>) => {
  const { candidates, refusals } = candidatesOf(planOf(...change));
  return {
    candidates: candidates.map(
      ({ arrangement, units, blocks }) => `${arrangement}; ${units.join()}; ${blocks}`,
    ),
    refusals: refusals.map(({ reason }) => reason),
  };
};

test('containers that hold every treatment alike are blocks', () => {
  expect(told()).toEqual({ candidates: ['randomised blocks; position; containers'], refusals: [] });
});

test('one container is completely randomised, and a square of it may be drawn as one', () => {
  expect(told({ containers: containers(1, 3, 4) }).candidates).toEqual([
    'completely randomised; position; none',
  ]);
  expect(told({ containers: containers(1, 5, 5), border: 1 }).candidates).toEqual([
    'completely randomised; position; none',
    'latin square; position; none',
  ]);
  const four = [{ id: 'feed', name: 'Feed', levels: levels('a', 'b', 'c', 'd') }];
  expect(told({ factors: four, containers: containers(1, 4, 4) }).candidates).toEqual([
    'latin square; position; none',
    'completely randomised; position; none',
  ]);
});

test('plots of several positions are shared out as plots', () => {
  const plots = { allot: ['plot' as const], plot: { rows: 3, columns: 1 } };
  expect(told({ ...plots, containers: containers(3, 3, 3) }).candidates).toEqual([
    'randomised blocks; plot; containers',
  ]);
  // Four plots a container for three treatments: only over all containers do they come out even.
  expect(told({ ...plots, containers: containers(3, 3, 4) }).candidates).toEqual([
    'completely randomised; plot; none',
  ]);
  expect(told({ allot: ['plot'] }).refusals).toEqual([
    'plots can be allotted, but how many rows and columns make a plot is not said',
  ]);
});

test('one container for each treatment is refused with the reason, unless the grower insists', () => {
  const one = { allot: ['container' as const], containers: containers(3, 3, 4) };
  const refused = told(one);
  expect(refused.candidates).toEqual([]);
  expect(refused.refusals).toHaveLength(1);
  expect(refused.refusals[0]).toMatch(
    /^one container for each of 3 treatments cannot tell the treatment from the container/,
  );
  expect(told({ ...one, unreplicated: true }).candidates).toEqual(['unreplicated; container; none']);
});

test('containers are allotted in the blocks that the grower gave, or completely at random', () => {
  const whole = { allot: ['container' as const] };
  expect(told({ ...whole, containers: containers(6, 2, 2) }).candidates).toEqual([
    'completely randomised; container; none',
  ]);
  const inBlocks = ['1', '2'].flatMap((block) =>
    containers(3, 2, 2).map((one) => ({ ...one, id: `${one.id}${block}`, block })),
  );
  expect(told({ ...whole, containers: inBlocks }).candidates).toEqual([
    'randomised blocks; container; given',
    'completely randomised; container; none',
  ]);
  expect(told({ ...whole, containers: containers(5, 2, 2) }).refusals).toEqual([
    '3 treatments cannot be shared out evenly over 5 containers, at least two for each; change a grid, plan a border, or take other numbers of treatments or containers',
  ]);
});

test('what is dissolved in a tank is allotted to tanks, the rest within them: a split plot and nothing else', () => {
  const split = {
    factors: strengthAndCultivar,
    only: { strength: 'container' as const },
    allot: ['position' as const],
  };
  expect(told({ ...split, containers: containers(4, 2, 4) })).toEqual({
    candidates: ['split plot; container,position; none'],
    refusals: [],
  });
  const tooFew = told({ ...split, containers: containers(2, 2, 4) });
  expect(tooFew.candidates).toEqual([]);
  expect(tooFew.refusals[0]).toMatch(/^2 containers do not allow strength and cultivar/);
});
