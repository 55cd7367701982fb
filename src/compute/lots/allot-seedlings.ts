import { seededRandom } from '../../statistics/seeded-random.ts';
import { blocksOf, inOrderOfLots, type LotPlace } from './lot-place.ts';

/** The seedlings of a place, by their numbers from 1. */
export interface Planted<T extends LotPlace> {
  place: T;
  seedlings: number[];
}

/** Seeds beyond this start the treatments' own streams. */
const SEEDS = 2 ** 32;

/**
 * Allots seedlings graded by size: sorted from the largest down (as counted where alike), the first go to one block,
 * the next to another, so that within a block they are alike; which grade goes to which block, and where in its block
 * each seedling goes, is drawn. The smallest stay over.
 *
 * The stream is that of the seed plus 2^32, so that it has nothing to do with the lots of the treatments.
 *
 * @param sizes of each seedling, in any unit
 * @param seed a whole number from 0 to 2^32 - 1; throws for any other
 */
export function allotSeedlings<T extends LotPlace & { plants?: number }>(
  sizes: readonly number[],
  places: readonly T[],
  containers: readonly string[],
  seed: number,
): { planted: Planted<T>[]; left: number[] } | { reason: string } {
  if (!Number.isInteger(seed) || seed < 0 || seed >= SEEDS)
    throw new RangeError(
      `allotSeedlings requires a whole number from 0 to 2^32 - 1 as its seed, not ${seed}`,
    );
  const needed = places.reduce((total, { plants = 1 }) => total + plants, 0);
  if (sizes.length < needed)
    return { reason: `${needed} seedlings are needed, and there are ${sizes.length}` };
  const random = seededRandom(SEEDS + seed);
  const graded = sizes
    .map((size, index) => ({ size, number: index + 1 }))
    .sort((a, b) => b.size - a.size || a.number - b.number)
    .map(({ number }) => number);
  const blocks = random.shuffle(blocksOf(inOrderOfLots(places, containers)));
  const planted = blocks.flatMap((block) => {
    const count = block.reduce((total, { plants = 1 }) => total + plants, 0);
    const grade = random.shuffle(graded.splice(0, count));
    return block.map((place) => ({ place, seedlings: grade.splice(0, place.plants ?? 1) }));
  });
  return { planted, left: graded };
}
