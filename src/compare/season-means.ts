import type { Seasons } from '../model/generated/seasons.ts';
import { tUpperQuantile } from '../statistics/distributions/student-t.ts';
import { letters } from '../statistics/letters.ts';
import { tukeyKramerOf } from '../statistics/tukey-kramer.ts';
import type { TwoWayAdditive } from '../statistics/two-way-table/two-way-additive.ts';

const alpha = 0.05;

/** Means and their differences in linked sets: of trials as they were, or of trials as a sample. */
export type Fitted = Pick<TwoWayAdditive, 'sets' | 'means' | 'differences'>;

/** Every pair within a linked set by Tukey and Kramer's method, limits simultaneous within the set. */
export function pairsOf(fit: Fitted, cultivars: readonly string[]): Seasons['differences'] {
  const families = fit.sets.map(({ rows }) => (rows.length < 2 ? null : tukeyKramerOf(rows.length, alpha)));
  return fit.differences.map(({ a, b, set, estimate, se, df }) => {
    const pair = { a: cultivars[a]!, b: cultivars[b]!, estimate, se, df };
    if (se === null || df === null) return { ...pair, lower: null, upper: null, p_adjusted: null };
    const { lower, upper, p } = families[set]!(estimate, se, df);
    return { ...pair, lower, upper, p_adjusted: p };
  });
}

/** The adjusted means, with letters within each linked set, and in percent of the check where it is linked. */
export function adjustedMeans(
  fit: Fitted,
  cultivars: readonly string[],
  check: string | null,
  pairs: Seasons['differences'],
): Seasons['adjusted_means'] {
  const display = lettersBySet(fit, pairs, cultivars);
  const ofCheck = fit.means.find(({ row }) => cultivars[row] === check);
  return fit.means.map(({ row, set, estimate, se, df, columns }) => {
    const reach = se === null || df === null ? null : tUpperQuantile(alpha / 2, df) * se;
    const linked = ofCheck !== undefined && ofCheck.set === set && ofCheck.estimate > 0;
    return {
      cultivar: cultivars[row]!,
      mean: estimate,
      se,
      df,
      lower: reach === null ? null : estimate - reach,
      upper: reach === null ? null : estimate + reach,
      letters: display.get(row) ?? null,
      trials: columns,
      percent_of_check: linked ? (100 * estimate) / ofCheck.estimate : null,
    };
  });
}

function lettersBySet(
  fit: Fitted,
  pairs: Seasons['differences'],
  cultivars: readonly string[],
): Map<number, string> {
  const p = new Map(
    pairs.flatMap(({ a, b, p_adjusted }) => [
      [`${a} ${b}`, p_adjusted],
      [`${b} ${a}`, p_adjusted],
    ]),
  );
  const display = new Map<number, string>();
  fit.sets.forEach((_, set) => {
    const means = fit.means.filter((mean) => mean.set === set).sort((a, b) => b.estimate - a.estimate);
    const matrix = means.map((one) =>
      means.map((other) =>
        one === other ? 1 : (p.get(`${cultivars[one.row]!} ${cultivars[other.row]!}`) ?? null),
      ),
    );
    if (means.length < 2 || matrix.some((line) => line.includes(null))) return;
    letters(matrix as number[][], alpha).forEach((text, index) => display.set(means[index]!.row, text));
  });
  return display;
}
