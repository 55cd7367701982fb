import { expect, test } from 'vitest';
import { drawLots } from '../../../src/compute/lots/draw-lots.ts';
import { setOut } from '../../../src/compute/lots/set-out.ts';
import { seededNumbers } from '../../../src/compute/methods/drawing-lots.ts';
import { seededRandom } from '../../../src/statistics/seeded-random.ts';

/** The published words of the method, followed line by line in whole numbers of any size: as a stranger would. */
function stranger(seed: bigint) {
  const word = (x: bigint) => x & 0xffffffffn;
  const rotl = (x: bigint, by: bigint) => word((x << by) | (x >> (32n - by)));
  let c = word(seed);
  const h = seed >> 32n;
  const s = [0n, 1n, 2n, 3n].map((i) => {
    c = word(c + 0x9e3779b9n);
    let w = i % 2n === 0n ? c : c ^ word(h * 0x85ebca6bn);
    w = word((w ^ (w >> 16n)) * 0x85ebca6bn);
    w = word((w ^ (w >> 13n)) * 0xc2b2ae35n);
    return w ^ (w >> 16n);
  }) as [bigint, bigint, bigint, bigint];
  const draw = () => {
    const r = word(rotl(word(s[1] * 5n), 7n) * 9n);
    const t = word(s[1] << 9n);
    s[2] ^= s[0];
    s[3] ^= s[1];
    s[1] ^= s[2];
    s[0] ^= s[3];
    s[2] ^= t;
    s[3] = rotl(s[3], 11n);
    return r;
  };
  const below = (n: number) => {
    let product = draw() * BigInt(n);
    while (word(product) < 2n ** 32n % BigInt(n)) product = draw() * BigInt(n);
    return Number(product >> 32n);
  };
  const shuffle = <T>(items: T[]) => {
    for (let i = items.length - 1; i >= 1; i -= 1) {
      const other = below(i + 1);
      [items[i], items[other]] = [items[other]!, items[i]!];
    }
    return items;
  };
  return { draw, shuffle };
}

test('who follows the published words draws the same numbers, small seeds and large', () => {
  for (const seed of [0, 8812, 2 ** 32, 2 ** 53 - 1]) {
    const [ours, theirs] = [seededRandom(seed), stranger(BigInt(seed))];
    for (let draw = 0; draw < 200; draw += 1) expect(ours.uint32()).toBe(Number(theirs.draw()));
    const items = Array.from({ length: 50 }, (_, index) => index);
    expect(ours.shuffle([...items])).toEqual(theirs.shuffle([...items]));
  }
});

test('who follows the published words draws the same blocks', () => {
  const grids = ['1', '2', '3'].map((block) => ({ id: `T${block}`, rows: 2, columns: 3, block }));
  const out = setOut(grids);
  if ('reason' in out) throw new Error(out.reason);
  const drawn = drawLots(out.places, {
    arrangement: 'randomised blocks',
    seed: 4107,
    containers: ['T1', 'T2', 'T3'],
    factors: [
      { id: 'cultivar', levels: ['a', 'b', 'c'], unit: 'position' },
      { id: 'cover', levels: ['x', 'y'], unit: 'position' },
    ],
  });
  if ('reason' in drawn) throw new Error(drawn.reason);
  const { shuffle } = stranger(4107n);
  const expected = grids.flatMap(() => shuffle(['ax', 'ay', 'bx', 'by', 'cx', 'cy']));
  const ours = out.places.map((place) => Object.values(drawn.treatments.get(place)!).join(''));
  expect(ours).toEqual(expected);
});

test('the numbers to hold a program against are those that the words give', () => {
  const [numbers] = seededNumbers.remarks ?? [];
  const { draw } = stranger(8812n);
  expect(numbers).toContain(`are ${draw()}, ${draw()}, ${draw()}, and`);
  expect(numbers).toContain(
    `into ${stranger(8812n)
      .shuffle([...'AABBCC'])
      .join(' ')}.`,
  );
});
