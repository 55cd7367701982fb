import { expect, test } from 'vitest';
import type { Harvest } from '../../src/check/facts.ts';
import { recordsByPosition } from '../../src/check/records-by-position.ts';
import { usualOf } from '../../src/check/weighings.ts';

test('the records of each position stand in the file’s order, whether one, several or none', () => {
  const { at, several } = recordsByPosition({ positionOf: [2, 0, 2, 5, 2, 0] } as unknown as Harvest);
  expect([0, 1, 2, 5, 6].map(at)).toEqual([[1, 5], [], [0, 2, 4], [3], []]);
  expect([...several]).toEqual([
    [2, [0, 2, 4]],
    [0, [1, 5]],
  ]);
});

test('the usual weight is the middle one, of two the upper, and none where there are fewer than four', () => {
  expect(usualOf([5, 1, 9])).toBe(0);
  expect(usualOf([9, 1, 5, 5])).toBe(5);
  expect(usualOf([9, 1, 5, 7])).toBe(7);
  expect(usualOf([3, 3, 3, 8, 8])).toBe(3);
  expect(usualOf([8, 3, 8, 3, 8])).toBe(8);
});
