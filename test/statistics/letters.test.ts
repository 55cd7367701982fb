import fc from 'fast-check';
import { expect, test } from 'vitest';
import { letters } from '../../src/statistics/letters.ts';
import { studentizedRangeUpperTail } from '../../src/statistics/studentized-range.ts';

/** A symmetric matrix from the p of pairs, first mean before second. */
function matrix(size: number, p: (a: number, b: number) => number): number[][] {
  return Array.from({ length: size }, (_, a) =>
    Array.from({ length: size }, (_, b) => (a === b ? 1 : p(Math.min(a, b), Math.max(a, b)))),
  );
}

const lettersOf = (text: string, separated: boolean) =>
  separated ? text.split(' ').filter(Boolean) : Array.from(text);

/** Every pair shares a letter exactly when its p is at least alpha. */
function expectFaithful(p: number[][], alpha: number, display: string[]): void {
  const separated = display.some((text) => text.includes(' '));
  for (let a = 0; a < p.length; a += 1) {
    expect(display[a]).not.toBe('');
    for (let b = a + 1; b < p.length; b += 1) {
      const mine = lettersOf(display[a]!, separated);
      const shared = lettersOf(display[b]!, separated).some((letter) => mine.includes(letter));
      expect(shared, `means ${a} and ${b}, p ${p[a]![b]}: ${display[a]} and ${display[b]}`).toBe(
        p[a]![b]! >= alpha,
      );
    }
  }
}

test('the middle of three that differs from neither end carries both letters', () => {
  expect(
    letters(
      [
        [1, 0.2, 0.01],
        [0.2, 1, 0.3],
        [0.01, 0.3, 1],
      ],
      0.05,
    ),
  ).toEqual(['a', 'ab', 'b']);
});

test('p equal to alpha shares a letter, and the least below it does not', () => {
  expect(
    letters(
      matrix(2, () => 0.05),
      0.05,
    ),
  ).toEqual(['a', 'a']);
  expect(
    letters(
      matrix(2, () => 0.04999999999),
      0.05,
    ),
  ).toEqual(['a', 'b']);
});

test('no means, one mean, all alike, all different', () => {
  expect(letters([], 0.05)).toEqual([]);
  expect(letters([[1]], 0.05)).toEqual(['a']);
  expect(
    letters(
      matrix(4, () => 0.9),
      0.05,
    ),
  ).toEqual(['a', 'a', 'a', 'a']);
  expect(
    letters(
      matrix(4, () => 0.001),
      0.05,
    ),
  ).toEqual(['a', 'b', 'c', 'd']);
});

test('a poorly replicated mean between two that differ is not forced under a line', () => {
  // First and second differ, third (few pots) differs from neither: a line under ordered means cannot say that.
  const p = matrix(3, (a, b) => (a === 0 && b === 1 ? 0.01 : 0.4));
  expect(letters(p, 0.05)).toEqual(['a', 'b', 'ab']);
});

test('a letter is shared exactly when p is at least alpha, for any p whatever, transitive or not', () => {
  const sized = fc.integer({ min: 2, max: 9 }).chain((size) =>
    fc.record({
      size: fc.constant(size),
      p: fc.array(fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(0.05, 0.0499, 0, 1)), {
        minLength: size * size,
        maxLength: size * size,
      }),
    }),
  );
  fc.assert(
    fc.property(sized, fc.constantFrom(0.05, 0.5, 0.9), ({ size, p }, alpha) => {
      const all = matrix(size, (a, b) => p[a * size + b]!);
      expectFaithful(all, alpha, letters(all, alpha));
    }),
    { numRuns: 400 },
  );
});

test('more than 26 letters go on as aa, ab, apart by spaces', () => {
  const display = letters(
    matrix(54, () => 0),
    0.05,
  );
  expect(display[25]).toBe('z');
  expect(display[26]).toBe('aa');
  expect(display[53]).toBe('bb');
  const chain = matrix(40, (a, b) => (b - a <= 1 ? 0.5 : 0.01));
  const linked = letters(chain, 0.05);
  expect(linked[0]).toBe('a');
  expect(linked[26]).toBe('z aa');
  expectFaithful(chain, 0.05, linked);
});

test('56 cultivars of unequal replication are lettered faithfully, in time', () => {
  const means = Array.from({ length: 56 }, (_, index) => 150 - index * 1.3);
  const replicates = means.map((_, index) => 2 + ((index * 7) % 5));
  const p = matrix(56, (a, b) => {
    const error = Math.sqrt((110 / 2) * (1 / replicates[a]! + 1 / replicates[b]!));
    return studentizedRangeUpperTail(Math.abs(means[a]! - means[b]!) / error, 56, 168);
  });
  const from = performance.now();
  const display = letters(p, 0.05);
  expect(performance.now() - from).toBeLessThan(3000);
  expectFaithful(p, 0.05, display);
});

test('p that is no p, or differs by direction, throws with what it refused', () => {
  expect(() =>
    letters(
      [
        [1, 0.2],
        [0.3, 1],
      ],
      0.05,
    ),
  ).toThrow('not 0.3 and 0.2');
  expect(() =>
    letters(
      [
        [1, NaN],
        [NaN, 1],
      ],
      0.05,
    ),
  ).toThrow('not NaN');
  expect(() => letters([[1, 0.5]], 0.05)).toThrow('as many columns');
  expect(() => letters([[1]], 5)).toThrow('not 5');
});

/** Letters of means by Tukey's test, largest mean first, with one standard error for every mean. */
function tukeyLetters(
  means: Record<string, number>,
  standardError: number,
  df: number,
): Record<string, string> {
  const names = Object.keys(means).sort((a, b) => means[b]! - means[a]!);
  const p = matrix(names.length, (a, b) =>
    studentizedRangeUpperTail((means[names[a]!]! - means[names[b]!]!) / standardError, names.length, df),
  );
  const display = letters(p, 0.05);
  return Object.fromEntries(names.map((name, index) => [name, display[index]!]));
}

test('the letters of published trials', () => {
  // R's data set PlantGrowth (Dobson 1983, table 7.1): ten plants a group, residual mean square 0.3885959.
  expect(
    tukeyLetters({ ctrl: 5.032, trt1: 4.661, trt2: 5.526 }, Math.sqrt(0.3885959259259258 / 10), 27),
  ).toEqual({
    trt2: 'a',
    ctrl: 'ab',
    trt1: 'b',
  });
  // Steel and Torrie (1980), section 7.9, mint: three pots of four plants, mean square of pots 2.152778 on 12.
  const mint = {
    low8: 3.6666666666666665,
    low12: 4.125,
    low16: 5.208333333333333,
    high8: 7.333333333333333,
    high12: 6.458333333333333,
    high16: 7.916666666666667,
  };
  const rightly = { high16: 'a', high8: 'a', high12: 'ab', low16: 'bc', low12: 'c', low8: 'c' };
  expect(tukeyLetters(mint, Math.sqrt(2.1527777777777777 / 12), 12)).toEqual(rightly);
  // Immer, Hayes and Powers (1934), barley: ten cultivars in twelve trials, residual mean square 20.949435 on 99.
  const barley = {
    Glabron: 33.34166583333333,
    Manchuria: 31.46389,
    'No. 457': 35.84722416666667,
    'No. 462': 35.37778083333333,
    'No. 475': 31.761110833333333,
    Peatland: 34.18055583333334,
    Svansota: 30.3777775,
    Trebi: 39.399993333333335,
    Velvet: 33.06110916666667,
    'Wisconsin No. 38': 39.394445833333336,
  };
  expect(tukeyLetters(barley, Math.sqrt(20.949435414439087 / 12), 99)).toEqual({
    Trebi: 'a',
    'Wisconsin No. 38': 'a',
    'No. 457': 'ab',
    'No. 462': 'ab',
    Peatland: 'ab',
    Glabron: 'b',
    Velvet: 'b',
    'No. 475': 'b',
    Manchuria: 'b',
    Svansota: 'b',
  });
});

test('plants taken for replicates would have parted the mint treatments further: five letters for three', () => {
  const means = {
    low8: 44 / 12,
    low12: 49.5 / 12,
    low16: 62.5 / 12,
    high8: 88 / 12,
    high12: 77.5 / 12,
    high16: 95 / 12,
  };
  // Pots and plants pooled: (25.833333 + 50.4375) / 66.
  expect(tukeyLetters(means, Math.sqrt((25.833333333333332 + 50.4375) / 66 / 12), 66)).toEqual({
    high16: 'a',
    high8: 'ab',
    high12: 'bc',
    low16: 'cd',
    low12: 'de',
    low8: 'e',
  });
});
