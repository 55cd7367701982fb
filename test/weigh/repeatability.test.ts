import { expect, test } from 'vitest';
import { repeatability } from '../../src/weigh/repeatability.ts';
import { repeatabilityOf, toWeighTwice } from '../../src/weigh/second-weighing.ts';
import { placeOf, stateOf, weighed } from './folder-to-weigh.ts';

test('Repeatability is the standard deviation of the differences over the root of two, without their drift', () => {
  // By hand: differences 1, 3, 2, 2, mean 2, squares 1, 1, 0, 0: variance 2/3.
  const found = repeatability([
    [100, 101],
    [110, 113],
    [120, 122],
    [130, 132],
  ]);
  expect(found?.pairs).toBe(4);
  expect(found?.meanDifference).toBe(2);
  expect(found?.standardDeviation).toBeCloseTo(Math.sqrt(2 / 3 / 2), 12);
  expect(found?.limit).toBeCloseTo(1.96 * Math.sqrt(2 / 3), 12);
  expect(repeatability([[1, 2]])).toBeNull();
});

test('Pots to be weighed twice stand at even steps along the walk, six at least, none that has no weight', () => {
  const entries = ['T1 1 1', 'T1 1 2', 'T1 1 3', 'T1 2 1', 'T1 2 2', 'T1 2 3', 'T2 1 1', 'T2 1 2'].map((at) =>
    weighed(at, '100'),
  );
  const state = stateOf([...entries, weighed('T2 1 3', '', { status: 'dead', values: {} })]);
  const places = toWeighTwice(state);
  expect(places).toHaveLength(6);
  expect(new Set(places.map((place) => JSON.stringify(place))).size).toBe(6);
  expect(places[0]).toEqual(placeOf('T1 1 1'));
  expect(places).not.toContainEqual(placeOf('T2 1 3'));
  expect(toWeighTwice(stateOf([]))).toEqual([]);
});

test('Second weights are paired with the first of their place', () => {
  const second = (at: string, value: string) =>
    ({ kind: 'second', place: placeOf(at), cut: 1, value }) as const;
  const state = stateOf([
    weighed('T1 1 1', '100'),
    weighed('T1 1 2', '110'),
    second('T1 1 1', '102'),
    second('T1 1 2', '108'),
    second('T1 1 3', '90'),
  ]);
  expect(repeatabilityOf(state)).toMatchObject({ pairs: 2, meanDifference: 0, standardDeviation: 2 });
});
