import { describe, expect, test } from 'vitest';
import { drawLatinSquare } from '../../../src/compute/lots/draw-latin-square.ts';
import { drawLots, type LotPlan } from '../../../src/compute/lots/draw-lots.ts';
import type { LotPlace } from '../../../src/compute/lots/lot-place.ts';
import { setOut } from '../../../src/compute/lots/set-out.ts';
import { seededRandom } from '../../../src/statistics/seeded-random.ts';
import { evenP, frequencies, isLatin } from './frequencies.ts';

/** The seeds are 0, 1, 2, ..., so that each of these tests has one outcome for ever. */
const DRAWS = 100_000;
const LEAST_P = 0.001;

type Grids = Parameters<typeof setOut>[0];
type How = Parameters<typeof setOut>[1];

function placesOf(grids: Grids, how?: How): LotPlace[] {
  const out = setOut(grids, how);
  if ('reason' in out) throw new Error(out.reason);
  return out.places;
}

function drawn(places: readonly LotPlace[], plan: LotPlan): string[] {
  const out = drawLots(places, plan);
  if ('reason' in out) throw new Error(out.reason);
  return places.map((place) => Object.values(out.treatments.get(place)!).join('/'));
}

const factor = (levels: string, unit: LotPlan['factors'][number]['unit'], id = 'cultivar') => ({
  id,
  levels: [...levels],
  unit,
});

describe('over 100,000 draws', () => {
  test('every order of a completely randomised trial is as likely as any other', () => {
    const places = placesOf([{ id: 'T', rows: 2, columns: 3 }]);
    const plan = {
      arrangement: 'completely randomised' as const,
      containers: ['T'],
      factors: [factor('abc', 'position')],
    };
    const counts = frequencies(DRAWS, (seed) => drawn(places, { ...plan, seed }).join(''));
    // 6! / (2! 2! 2!)
    expect(evenP(counts, 90)).toBeGreaterThan(LEAST_P);
  });

  test('every order of every block is as likely, whatever the other block has', () => {
    const grids = ['1', '2'].map((block) => ({ id: `T${block}`, rows: 1, columns: 3, block }));
    const plan = {
      arrangement: 'randomised blocks' as const,
      containers: ['T1', 'T2'],
      factors: [factor('abc', 'position')],
    };
    const places = placesOf(grids);
    const counts = frequencies(DRAWS, (seed) => drawn(places, { ...plan, seed }).join(''));
    expect(evenP(counts, 6 * 6)).toBeGreaterThan(LEAST_P);
  });

  test('every order of plots of several positions is as likely, each plot having one treatment', () => {
    const places = placesOf([{ id: 'T', rows: 2, columns: 8 }], { plot: { rows: 2, columns: 2 } });
    const plan = {
      arrangement: 'completely randomised' as const,
      containers: ['T'],
      factors: [factor('ab', 'plot')],
    };
    const counts = frequencies(DRAWS, (seed) => {
      const treatments = drawn(places, { ...plan, seed });
      const top = treatments.slice(0, 8).join('');
      expect(treatments.slice(8).join('')).toBe(top);
      return top;
    });
    expect(evenP(counts, 6)).toBeGreaterThan(LEAST_P);
    expect([...counts.keys()].every((row) => /^(aa|bb){4}$/.test(row))).toBe(true);
  });

  test('every order of whole containers is as likely, at random, in blocks, or one for each treatment', () => {
    const grids = ['1', '1', '2', '2'].map((block, index) => ({
      id: `T${index}`,
      rows: 1,
      columns: 2,
      block,
    }));
    const containers = grids.map(({ id }) => id);
    const places = placesOf(grids);
    const over = (arrangement: LotPlan['arrangement'], levels: string) =>
      frequencies(DRAWS, (seed) =>
        drawn(places, { arrangement, containers, seed, factors: [factor(levels, 'container')] }).join(''),
      );
    // 4! / (2! 2!); twice 2!; 4!
    expect(evenP(over('completely randomised', 'ab'), 6)).toBeGreaterThan(LEAST_P);
    expect(evenP(over('randomised blocks', 'ab'), 4)).toBeGreaterThan(LEAST_P);
    expect(evenP(over('unreplicated', 'abcd'), 24)).toBeGreaterThan(LEAST_P);
  });

  test('within a border every order of what it leaves is as likely', () => {
    const places = placesOf([{ id: 'T', rows: 4, columns: 4 }], { border: 1 });
    const plan = {
      arrangement: 'completely randomised' as const,
      containers: ['T'],
      factors: [factor('ab', 'position')],
    };
    const counts = frequencies(DRAWS, (seed) => drawn(places, { ...plan, seed }).join(''));
    expect(evenP(counts, 6)).toBeGreaterThan(LEAST_P);
  });

  test('main plots and the plots in each of them are drawn evenly and apart', () => {
    const grids = ['1', '2']
      .map((block) => [`A${block}`, `B${block}`].map((id) => ({ id, rows: 1, columns: 2, block })))
      .flat();
    const plan = {
      arrangement: 'split plot' as const,
      containers: grids.map(({ id }) => id),
      factors: [factor('xy', 'container', 'strength'), factor('ab', 'position')],
    };
    const places = placesOf(grids);
    const counts = frequencies(DRAWS, (seed) => drawn(places, { ...plan, seed }).join(' '));
    // Two blocks, in each 2 orders of the containers and 2 orders within each of the 2 containers.
    expect(evenP(counts, 8 * 8)).toBeGreaterThan(LEAST_P);
  });

  test.each([
    [3, 12],
    [4, 576],
  ])('every Latin square of size %i is as likely as any of the %i', (size, squares) => {
    const counts = frequencies(DRAWS, (seed) => {
      const square = drawLatinSquare(size, seededRandom(seed));
      expect(isLatin(square)).toBe(true);
      return square.join(' ');
    });
    expect(evenP(counts, squares)).toBeGreaterThan(LEAST_P);
  });

  test('a Latin square of plots is drawn as evenly in the places of a trial', () => {
    const places = placesOf([{ id: 'T', rows: 3, columns: 6 }], { plot: { rows: 1, columns: 2 } });
    const plan = {
      arrangement: 'latin square' as const,
      containers: ['T'],
      factors: [factor('abc', 'plot')],
    };
    const counts = frequencies(DRAWS, (seed) => drawn(places, { ...plan, seed }).join(''));
    expect(evenP(counts, 12)).toBeGreaterThan(LEAST_P);
    expect([...counts.keys()].every((letters) => /^(?:(.)\1){9}$/.test(letters))).toBe(true);
  });

  test('every standard square of size 5 is drawn as often, once its rows and columns are put in order', () => {
    const counts = frequencies(DRAWS, (seed) => standardForm(drawLatinSquare(5, seededRandom(seed))));
    expect(evenP(counts, 56)).toBeGreaterThan(LEAST_P);
  });

  test('in squares of size 6 and 7 every letter is as often in every cell', () => {
    for (const size of [6, 7]) {
      const cells = Array.from({ length: size * size }, () => new Map<string, number>());
      for (let seed = 0; seed < DRAWS; seed += 1) {
        const square = drawLatinSquare(size, seededRandom(seed));
        if (!isLatin(square)) throw new Error(`seed ${seed} draws no Latin square`);
        square.flat().forEach((letter, cell) => {
          cells[cell]!.set(String(letter), (cells[cell]!.get(String(letter)) ?? 0) + 1);
        });
      }
      // The lowest of so many p is low by chance: each is held to the bound divided by their number.
      expect(Math.min(...cells.map((counts) => evenP(counts, size)))).toBeGreaterThan(LEAST_P / cells.length);
    }
  });
});

/** The square with its letters renamed and its rows ordered so that the first row and column are in order. */
function standardForm(square: readonly (readonly number[])[]): string {
  const order = square[0]!;
  const renamed = square.map((row) => row.map((letter) => order.indexOf(letter)));
  return renamed.sort((a, b) => a[0]! - b[0]!).join(' ');
}

describe('one seed', () => {
  const places = placesOf([
    { id: 'T1', rows: 2, columns: 2, block: '1' },
    { id: 'T2', rows: 2, columns: 2, block: '2' },
  ]);
  const plan: LotPlan = {
    arrangement: 'randomised blocks',
    seed: 8812,
    containers: ['T1', 'T2'],
    factors: [factor('abcd', 'position')],
  };

  test('draws one layout, whatever the order in which the places are given', () => {
    const first = drawn(places, plan);
    expect(drawn(places, plan)).toEqual(first);
    expect(drawn([...places].reverse(), plan)).toEqual([...first].reverse());
    expect(drawn(places, { ...plan, seed: 8813 })).not.toEqual(first);
  });

  test('deals anew the treatments that each block has, unequal numbers too', () => {
    const had = new Map(places.map((place, index) => [place, { cultivar: 'aaabbcca'[index]! }]));
    const out = drawLots(places, { ...plan, factors: [factor('abc', 'position')] }, (place) =>
      had.get(place)!,
    );
    if ('reason' in out) throw new Error(out.reason);
    const got = places.map((place) => out.treatments.get(place)!['cultivar']!);
    expect(got.slice(0, 4).sort().join('')).toBe('aaab');
    expect(got.slice(4).sort().join('')).toBe('abcc');
  });
});

describe('what cannot be drawn is refused with the reason', () => {
  const places = placesOf([{ id: 'T', rows: 2, columns: 2 }]);
  const plan: LotPlan = {
    arrangement: 'completely randomised',
    seed: 1,
    containers: ['T'],
    factors: [factor('abc', 'position')],
  };
  test.each<[string, Partial<LotPlan>, string]>([
    ['an uneven share', {}, '3 treatments cannot be shared out evenly over 4 positions'],
    ['a square that is none', { arrangement: 'latin square' }, '3 treatments need 3 rows and 3 columns'],
    ['main plots without a name', { arrangement: 'split plot' }, 'the main plots are not named'],
    ['a seed that is none', { seed: 0.5 }, 'the seed 0.5 is no whole number'],
    ['a seed beyond 2^53', { seed: 2 ** 53 }, 'is no whole number from 0 to 9007199254740991'],
    ['no factor', { factors: [] }, 'there is nothing to draw lots for'],
    [
      'a square of containers',
      { arrangement: 'latin square', factors: [factor('ab', 'container')] },
      'the plots or the positions',
    ],
  ])('%s', (_, change, reason) => {
    const out = drawLots(places, { ...plan, ...change });
    expect('reason' in out ? out.reason : 'drawn').toContain(reason);
  });

  test('a container that lies in two blocks', () => {
    const split = places.map((place, index) => ({ ...place, block: index < 2 ? '1' : '2' }));
    const out = drawLots(split, {
      ...plan,
      arrangement: 'randomised blocks',
      factors: [factor('ab', 'container')],
    });
    expect('reason' in out ? out.reason : 'drawn').toBe(
      'a container lies in more than one block or main plot',
    );
  });
});
