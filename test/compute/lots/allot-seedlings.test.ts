import { expect, test } from 'vitest';
import { allotSeedlings } from '../../../src/compute/lots/allot-seedlings.ts';
import { evenP, frequencies } from './frequencies.ts';

const places = ['1', '2'].flatMap((block) =>
  [1, 2, 3].map((column) => ({ container: `T${block}`, row: 1, column, block, plot: null })),
);
const containers = ['T1', 'T2'];
/** Seedlings 2, 4 and 6 are the large ones; 7 is the smallest. */
const sizes = [30, 52, 31, 50, 29, 51, 12];

function allotted(seed: number, given = sizes) {
  const out = allotSeedlings(given, places, containers, seed);
  if ('reason' in out) throw new Error(out.reason);
  return out;
}

test('a block holds seedlings of one grade, and the smallest stay over', () => {
  for (let seed = 0; seed < 50; seed += 1) {
    const { planted, left } = allotted(seed);
    expect(left).toEqual([7]);
    const grades = containers.map((container) =>
      planted
        .filter(({ place }) => place.container === container)
        .flatMap(({ seedlings }) => seedlings)
        .sort()
        .join(),
    );
    expect(grades.sort()).toEqual(['1,3,5', '2,4,6']);
  }
});

test('which block gets which grade, and the order within, are even to chance over 100,000 draws', () => {
  const counts = frequencies(100_000, (seed) =>
    places
      .map((place) =>
        allotted(seed)
          .planted.find((each) => each.place === place)!
          .seedlings.join(),
      )
      .join(' '),
  );
  expect(evenP(counts, 2 * 6 * 6)).toBeGreaterThan(0.001);
});

test('a pot of several plants gets as many seedlings', () => {
  const two = places.map((place) => ({ ...place, plants: 2 }));
  const out = allotSeedlings(
    Array.from({ length: 12 }, (_, index) => index),
    two,
    containers,
    3,
  );
  if ('reason' in out) throw new Error(out.reason);
  expect(out.planted.every(({ seedlings }) => seedlings.length === 2)).toBe(true);
  expect(new Set(out.planted.flatMap(({ seedlings }) => seedlings)).size).toBe(12);
});

test('too few seedlings are refused with the number needed, and a seed that is none throws', () => {
  expect(allotSeedlings([1, 2], places, containers, 1)).toEqual({
    reason: '6 seedlings are needed, and there are 2',
  });
  expect(() => allotSeedlings(sizes, places, containers, 2 ** 32)).toThrow('not 4294967296');
});
