import { normalUpperQuantile } from './distributions/normal.ts';

/** A stream of random numbers that its seed determines wholly, alike in Node and in every browser. */
export interface SeededRandom {
  /** A whole number from 0 to 2^32 - 1, each as likely. */
  uint32(): number;
  /** A whole number from 0 to `below` - 1, each exactly as likely; `below` is from 1 to 2^32. */
  integer(below: number): number;
  /** A number above 0 and below 1, of 52 bits and a half. */
  uniform(): number;
  /** A standard normal deviate, by inversion. */
  normal(): number;
  /** Puts an array into a random order in place, each order as likely (Fisher and Yates), and returns it. */
  shuffle<T>(items: T[]): T[];
}

/** So many parts of 2^32 multiply exactly in a double. */
const exactParts = 2 ** 21;

const rotate = (x: number, by: number) => (x << by) | (x >>> (32 - by));

/**
 * The four words of state from a seed, by splitmix64's 32-bit counterpart: a counter stepped by the golden ratio,
 * its bits mixed by the finaliser of MurmurHash3, so that neighbouring seeds give unrelated streams.
 */
function stateOf(seed: number): Uint32Array {
  let counter = seed >>> 0;
  const high = Math.floor(seed / 2 ** 32);
  return Uint32Array.from({ length: 4 }, (_, index) => {
    counter = (counter + 0x9e3779b9) | 0;
    let word = counter ^ (index % 2 === 0 ? 0 : Math.imul(high, 0x85ebca6b));
    word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
    word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
    return (word ^ (word >>> 16)) >>> 0;
  });
}

/** xoshiro128**, started from four words that are not all 0. Exported for checking against its published code. */
export function xoshiro128StarStar(state: Uint32Array): () => number {
  const s = Uint32Array.from(state);
  if (s.length !== 4 || s.every((word) => word === 0)) {
    throw new RangeError('xoshiro128StarStar requires four words of state, not all 0');
  }
  return () => {
    const result = Math.imul(rotate(Math.imul(s[1]!, 5), 7), 9) >>> 0;
    const shifted = s[1]! << 9;
    s[2]! ^= s[0]!;
    s[3]! ^= s[1]!;
    s[1]! ^= s[2]!;
    s[0]! ^= s[3]!;
    s[2]! ^= shifted;
    s[3] = rotate(s[3]!, 11);
    return result;
  };
}

/**
 * A seeded generator: xoshiro128** in 32-bit whole-number arithmetic, with period 2^128 - 1.
 *
 * Reference: D. Blackman and S. Vigna (2021), Scrambled linear pseudorandom number generators, ACM Transactions
 * on Mathematical Software 47, article 36.
 *
 * @param seed a whole number from 0 to 2^53 - 1; throws for any other
 * @example seededRandom(8812).integer(6) // 5, the same on every machine
 */
export function seededRandom(seed: number): SeededRandom {
  if (!Number.isSafeInteger(seed) || seed < 0) {
    throw new RangeError(`seededRandom requires a whole number from 0 to 2^53 - 1 as its seed, not ${seed}`);
  }
  const uint32 = xoshiro128StarStar(stateOf(seed));
  // Where the products of `integer` would round: draws past the last whole multiple are drawn again.
  const remainder = (below: number) => {
    const limit = 2 ** 32 - (2 ** 32 % below);
    let draw = uint32();
    while (draw >= limit) draw = uint32();
    return draw % below;
  };
  const integer = (below: number) => {
    if (!Number.isInteger(below) || below < 1 || below > 2 ** 32) {
      throw new RangeError(`integer requires a whole number from 1 to 2^32, not ${below}`);
    }
    if (below > exactParts) return remainder(below);
    // The draw's place among `below` equal parts; draws that would favour a part are drawn again.
    for (;;) {
      const product = uint32() * below;
      const part = Math.floor(product / 2 ** 32);
      const within = product - part * 2 ** 32;
      if (within >= below || within >= 2 ** 32 % below) return part;
    }
  };
  const uniform = () => ((uint32() >>> 6) * 2 ** 26 + (uint32() >>> 6) + 0.5) / 2 ** 52;
  return {
    uint32,
    integer,
    uniform,
    normal: () => normalUpperQuantile(uniform()),
    shuffle(items) {
      for (let last = items.length - 1; last > 0; last -= 1) {
        const other = integer(last + 1);
        const moved = items[last]!;
        items[last] = items[other]!;
        items[other] = moved;
      }
      return items;
    },
  };
}
