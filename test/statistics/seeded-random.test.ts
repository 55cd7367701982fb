import { expect, test } from 'vitest';
import { chiSquareUpperTail } from '../../src/statistics/distributions/chi-square.ts';
import { meanOf } from '../../src/statistics/mean.ts';
import { seededRandom, xoshiro128StarStar } from '../../src/statistics/seeded-random.ts';
import { shapiroWilk } from '../../src/statistics/shapiro-wilk.ts';
import { varianceOf } from '../../src/statistics/variance.ts';

/** The published C of xoshiro128** (Blackman and Vigna), line by line in whole numbers of any size. */
function published(state: bigint[]): () => number {
  const word = (1n << 32n) - 1n;
  const rotl = (x: bigint, k: bigint) => ((x << k) | (x >> (32n - k))) & word;
  const s = [...state];
  return () => {
    const result = (rotl((s[1]! * 5n) & word, 7n) * 9n) & word;
    const t = (s[1]! << 9n) & word;
    s[2]! ^= s[0]!;
    s[3]! ^= s[1]!;
    s[1]! ^= s[2]!;
    s[0]! ^= s[3]!;
    s[2]! ^= t;
    s[3] = rotl(s[3]!, 11n);
    return Number(result);
  };
}

test('the generator is xoshiro128** as published', () => {
  for (const state of [
    [1, 2, 3, 4],
    [0xffffffff, 0x80000000, 7, 0xdeadbeef],
  ]) {
    const ours = xoshiro128StarStar(Uint32Array.from(state));
    const theirs = published(state.map(BigInt));
    for (let draw = 0; draw < 1000; draw += 1) expect(ours()).toBe(theirs());
  }
  // First outputs from the state 1, 2, 3, 4: 9 rotl(5 x 2, 7) = 11520, then 0, as the state then has 0 in its place.
  const first = xoshiro128StarStar(Uint32Array.of(1, 2, 3, 4));
  expect([first(), first()]).toEqual([11520, 0]);
});

test('one seed gives one stream; other seeds, large ones too, give others', () => {
  const stream = (seed: number) => {
    const random = seededRandom(seed);
    return Array.from({ length: 8 }, () => random.uint32());
  };
  expect(stream(8812)).toEqual(stream(8812));
  const streams = [0, 1, 2, 8812, 2 ** 32, 2 ** 32 + 1, 2 ** 53 - 1].map((seed) => stream(seed).join());
  expect(new Set(streams).size).toBe(streams.length);
});

test('whole numbers below six are even to chance, and none lies outside', () => {
  const random = seededRandom(3);
  const counts = [0, 0, 0, 0, 0, 0];
  for (let draw = 0; draw < 60_000; draw += 1) counts[random.integer(6)]! += 1;
  expect(counts.reduce((total, count) => total + count, 0)).toBe(60_000);
  const distance = counts.reduce((total, count) => total + (count - 10_000) ** 2 / 10_000, 0);
  expect(chiSquareUpperTail(distance, 5)).toBeGreaterThan(0.001);
});

test('a number of faces that does not divide 2^32 is not favoured at its low end', () => {
  // Below 3 x 2^30 a plain remainder would fall in the lowest third half of the time.
  const random = seededRandom(11);
  const draws = Array.from({ length: 30_000 }, () => random.integer(3 * 2 ** 30));
  const lowest = draws.filter((draw) => draw < 2 ** 30).length / draws.length;
  expect(Math.abs(lowest - 1 / 3)).toBeLessThan(0.02);
  expect(seededRandom(1).integer(1)).toBe(0);
});

test('all orders of three are as likely, and shuffling keeps the items', () => {
  const random = seededRandom(5);
  const counts = new Map<string, number>();
  for (let draw = 0; draw < 12_000; draw += 1) {
    const order = random.shuffle(['a', 'b', 'c']).join('');
    counts.set(order, (counts.get(order) ?? 0) + 1);
  }
  expect(counts.size).toBe(6);
  const distance = [...counts.values()].reduce((total, count) => total + (count - 2000) ** 2 / 2000, 0);
  expect(chiSquareUpperTail(distance, 5)).toBeGreaterThan(0.001);
});

test('uniform and normal deviates have the moments of their distributions', () => {
  const random = seededRandom(2025);
  const uniform = Array.from({ length: 20_000 }, () => random.uniform());
  expect(Math.abs(meanOf(uniform) - 0.5)).toBeLessThan(0.01);
  expect(Math.abs(varianceOf(uniform) - 1 / 12)).toBeLessThan(0.002);
  expect(uniform.every((value) => value > 0 && value < 1)).toBe(true);
  const normal = Array.from({ length: 4000 }, () => random.normal());
  expect(Math.abs(meanOf(normal))).toBeLessThan(0.06);
  expect(Math.abs(varianceOf(normal) - 1)).toBeLessThan(0.08);
  expect(shapiroWilk(normal).p).toBeGreaterThan(0.001);
});

test('a seed or a bound that is none throws with the value it refused', () => {
  expect(() => seededRandom(-1)).toThrow('not -1');
  expect(() => seededRandom(1.5)).toThrow('not 1.5');
  expect(() => seededRandom(1).integer(0)).toThrow('not 0');
  expect(() => xoshiro128StarStar(new Uint32Array(4))).toThrow('not all 0');
});
