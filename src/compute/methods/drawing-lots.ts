import { seededRandom } from '../../statistics/seeded-random.ts';
import { LOT_METHOD } from '../lots/draw-lots.ts';
import type { Method } from './method.ts';

/** The seed of the numbers that a reader's own program can be held against. */
const SEED = 8812;

/** A list as the method deals it. */
const dealt = (items: string) => seededRandom(SEED).shuffle(items.split('')).join(' ');

const firstDraws = () => {
  const random = seededRandom(SEED);
  return [1, 2, 3].map(() => String(random.uint32())).join(', ');
};

export const seededNumbers: Method = {
  id: 'seeded-numbers',
  name: 'Random numbers from a seed',
  use: 'Everything on this site that is random comes from a seed that is printed beside it, so that it can be drawn again on any machine: lots, randomisation tests and directions of a numerical integration. The numbers come from the generator xoshiro128**; all of it is arithmetic with whole numbers of 32 bits, so that no rounding can differ.',
  formula: [
    'start: c = seed mod 2³², h = seed ÷ 2³² rounded down; for each word i = 0, 1, 2, 3:',
    'c ← c + 9E3779B9₁₆; w = c where i is even, c xor (h × 85EBCA6B₁₆) where i is odd',
    'w ← (w xor w ≫ 16) × 85EBCA6B₁₆; w ← (w xor w ≫ 13) × C2B2AE35₁₆; sᵢ = w xor w ≫ 16',
    'draw: r = rotl(s₁ × 5, 7) × 9; then t = s₁ ≪ 9, s₂ ← s₂ xor s₀, s₃ ← s₃ xor s₁, s₁ ← s₁ xor s₂, s₀ ← s₀ xor s₃, s₂ ← s₂ xor t, s₃ ← rotl(s₃, 11)',
    'a whole number below n: (r × n) ÷ 2³² rounded down; drawn again while (r × n) mod 2³² < 2³² mod n',
    'shuffling items 0 to n − 1: for i = n − 1 down to 1, exchange item i with item (a whole number below i + 1)',
  ],
  remarks: [
    `To hold a program of your own against it: the first three draws of seed ${SEED} are ${firstDraws()}, and the list A A B B C C is shuffled by it into ${dealt('AABBCC')}.`,
    'Drawing again where the remainder is small makes every whole number exactly as likely; every order of a list is then as likely too.',
  ],
  references: [
    'D. Blackman and S. Vigna (2021), Scrambled linear pseudorandom number generators, ACM Transactions on Mathematical Software 47, article 36.',
    'D. Lemire (2019), Fast random integer generation in an interval, ACM Transactions on Modeling and Computer Simulation 29, article 3.',
    'R. A. Fisher and F. Yates (1938), Statistical Tables for Biological, Agricultural and Medical Research, Oliver and Boyd.',
  ],
  example: () => null,
};

export const drawingLots: Method = {
  id: 'drawing-lots',
  name: 'Drawing lots',
  use: `How treatments are allotted to containers, plots or positions by lot, so that anyone can draw the same layout again. Where trial.yaml names this method (design.lot: {method: ${LOT_METHOD}}), the check draws the lots again from design.seed and compares them with the layout.`,
  formula: [
    'order of units: containers as trial.yaml lists them, within each row by row, within a row by column; a plot stands where its first position does',
    'order of treatments: every combination of levels as trial.yaml lists them, the last factor’s level changing fastest',
    'completely randomised: the list of all units’ treatments, in order, is shuffled and dealt to the units in order',
    'randomised blocks: the same within each block, blocks in the order of their first positions',
    'split plot: the coarser factor is dealt first, in each block; then the finer factor within each main plot, in order',
  ],
  remarks: [
    'One stream of numbers, begun from the seed, serves the whole trial. Each group keeps the treatments that it has, as often as it has them; only their order is drawn. So every order of a group’s list is as likely as any other, and independent of other groups.',
    'A border that takes no part has no rows in layout.csv. Seedlings can be allotted by lot as well: sorted by size, the largest fill one block, the next another, by lot which; within a block each place’s seedling is drawn. That stream begins from the seed plus 2³².',
  ],
  references: [
    'R. A. Fisher (1935), The Design of Experiments, Oliver and Boyd.',
    'D. R. Cox (1958), Planning of Experiments, Wiley, chapter 5.',
  ],
  example: () => null,
};

export const latinSquareLots: Method = {
  id: 'drawing-latin-squares',
  name: 'Drawing a Latin square',
  use: 'A square of as many rows and columns as there are treatments, in which each stands once in every row and column. Each container is a square of its own, drawn in the order of the containers.',
  formula: [
    'a standard square (first row and first column in order): by lot from all of its size, in the order of their rows read as one word (1, 1, 4, 56 and 9408 of size 2 to 6; a whole number below that is drawn where there are several); from size 7 on the cyclic one',
    'the order of the rows is shuffled, then that of the columns, then that of the letters: cell (i, j) = letter[standard(row[i], column[j])]',
  ],
  remarks: [
    'Up to size 6 every Latin square of that size is exactly as likely as any other: 2, 12, 576, 161,280 and 812,851,200 of them. From size 7 on every square is as likely that the cyclic one can be turned into by the order of its rows, columns and letters, and no other is drawn. In both cases every treatment is as likely in every cell.',
  ],
  references: [
    'R. A. Fisher and F. Yates (1934), The 6 × 6 Latin squares, Proceedings of the Cambridge Philosophical Society 30, 492–507.',
  ],
  example: () => null,
};
