import { expect, test } from 'vitest';
import { containerTotals } from '../../src/weigh/container-total.ts';
import { stateOf, weighed } from './folder-to-weigh.ts';

const plants = [
  weighed('T1 1 1', '100'),
  weighed('T1 1 2', '110'),
  weighed('T1 1 3', '120'),
  weighed('T1 2 1', '130'),
  weighed('T1 2 2', '', { status: 'dead', values: {} }),
];
const total = (value: string) => ({ kind: 'total', container: 'T1', cut: 1, value }) as const;
const first = (...more: Parameters<typeof stateOf>[0]) => containerTotals(stateOf([...plants, ...more]))[0];

test('The sum of a container runs along', () => {
  expect(first()).toMatchObject({
    container: 'T1',
    places: 6,
    entered: 5,
    n: 4,
    sum: 460,
    verdict: 'no total',
  });
});

test('A total is compared once every plant is entered, and rounding explains (n + 1) half steps', () => {
  const last = weighed('T1 2 3', '140');
  expect(first(total('600'))?.verdict).toBe('not complete');
  // 5 weights of 1 g steps: (5 + 1) x 1 / 2 = 3 g.
  expect(first(last, total('603'))).toMatchObject({ difference: 3, byRounding: 3, verdict: 'agrees' });
  expect(first(last, total('604'))).toMatchObject({ difference: 4, byRounding: 3, verdict: 'differs' });
  expect(first(last, total('596'))).toMatchObject({ difference: -4, verdict: 'differs' });
});

test('A plant that was not weighed leaves the sum unknown', () => {
  const unknown = weighed('T1 2 3', '', { status: 'not weighed', values: {} });
  expect(first(unknown, total('600'))).toMatchObject({ notWeighed: 1, verdict: 'not complete' });
});

test('The last total typed holds, and an empty one takes it back', () => {
  expect(first(total('600'), total('599'))?.total).toBe('599');
  expect(first(total('600'), total(''))?.verdict).toBe('no total');
});
