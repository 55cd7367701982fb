import { chiSquareUpperTail } from './distributions/chi-square.ts';
import type { RankTest } from './kruskal-wallis.ts';
import { ranks } from './ranks.ts';
import { present, type Recorded } from './statistic.ts';

/**
 * The Friedman test that treatments lie alike, on ranks within complete blocks, corrected for ties; p from
 * chi-square on one less than the number of treatments.
 *
 * @param blocks one row a block, one value a treatment in the same order in each; a block with a missing value
 *   (null) is left out whole, its missing values counted; n is the number of values in complete blocks
 * Null with a reason where fewer than two blocks are complete, or all values within every block are equal.
 * Throws where blocks differ in length or have fewer than two treatments.
 *
 * Reference: M. Friedman (1937), The use of ranks to avoid the assumption of normality implicit in the analysis
 * of variance, Journal of the American Statistical Association 32, 675-701; ties: W. J. Conover (1999),
 * Practical Nonparametric Statistics, 3rd edition, section 5.8.
 *
 * @example friedman([[1, 2, 3], [4, 5, 9], [2, 1, 8]]).df // 2
 */
export function friedman(blocks: readonly Recorded[]): RankTest {
  const treatments = blocks[0]?.length ?? 0;
  if (treatments < 2 || blocks.some(({ length }) => length !== treatments)) {
    throw new RangeError('friedman requires blocks of the same two or more treatments');
  }
  const split = blocks.map((block) => present(block, 'friedman'));
  const missing = split.reduce((total, block) => total + block.missing, 0);
  const complete = split.filter((block) => block.missing === 0).map(({ numbers }) => numbers);
  const n = complete.length * treatments;
  const none = (reason: string): RankTest => ({ statistic: null, df: null, p: null, reason, n, missing });
  if (complete.length < 2) return none('ranks within blocks need at least two complete blocks');
  const totals = new Array<number>(treatments).fill(0);
  let squares = 0;
  for (const block of complete) {
    ranks(block).ranks.forEach((rank, index) => {
      totals[index]! += rank;
      squares += rank * rank;
    });
  }
  const count = complete.length;
  const expected = (count * (treatments + 1)) / 2;
  const spread = squares - (count * treatments * (treatments + 1) ** 2) / 4;
  if (spread === 0) return none('all values within each block are equal, so ranks show nothing');
  const between = totals.reduce((total, value) => total + (value - expected) ** 2, 0);
  const statistic = ((treatments - 1) * between) / spread;
  return { statistic, df: treatments - 1, p: chiSquareUpperTail(statistic, treatments - 1), n, missing };
}
