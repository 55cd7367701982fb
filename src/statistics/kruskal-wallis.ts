import { chiSquareUpperTail } from './distributions/chi-square.ts';
import { ranks } from './ranks.ts';
import { present, type Recorded } from './statistic.ts';

export type RankTest =
  | { statistic: number; df: number; p: number; n: number; missing: number }
  | { statistic: null; df: null; p: null; reason: string; n: number; missing: number };

/**
 * The Kruskal-Wallis test that groups lie alike, on ranks, corrected for ties; p from chi-square on one less
 * than the number of groups. Groups may differ in size; missing values (null) are left out and counted, and a
 * group left empty does not take part. Null with a reason where fewer than two groups have values or all
 * values are equal.
 *
 * Reference: W. H. Kruskal and W. A. Wallis (1952), Use of ranks in one-criterion variance analysis, Journal
 * of the American Statistical Association 47, 583-621.
 *
 * @example kruskalWallis([[1, 2], [3, 4]]).statistic // 2.4
 */
export function kruskalWallis(groups: readonly Recorded[]): RankTest {
  const split = groups.map((group) => present(group, 'kruskalWallis'));
  const missing = split.reduce((total, group) => total + group.missing, 0);
  const kept = split.map(({ numbers }) => numbers).filter(({ length }) => length > 0);
  const all = kept.flat();
  const n = all.length;
  const none = (reason: string): RankTest => ({ statistic: null, df: null, p: null, reason, n, missing });
  if (kept.length < 2) return none('ranks can be compared only between at least two groups with values');
  const ranked = ranks(all);
  const tied = ranked.ties.reduce((total, size) => total + (size ** 3 - size), 0);
  if (tied === n ** 3 - n) return none('all values are equal, so ranks show nothing');
  let start = 0;
  let between = 0;
  for (const { length } of kept) {
    const own = ranked.ranks.slice(start, (start += length));
    const excess = own.reduce((total, rank) => total + rank, 0) / length - (n + 1) / 2;
    between += length * excess * excess;
  }
  const statistic = ((12 / (n * (n + 1))) * between) / (1 - tied / (n ** 3 - n));
  const df = kept.length - 1;
  return { statistic, df, p: chiSquareUpperTail(statistic, df), n, missing };
}
