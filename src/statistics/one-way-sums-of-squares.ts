import { centred } from './centred.ts';
import { fUpperTail } from './distributions/fisher-f.ts';
import { meanOf } from './mean.ts';
import { sum } from './sum.ts';

export interface OneWaySumsOfSquares {
  groups: number;
  n: number;
  /** Group means in the unit of the data, in the order given. */
  means: number[];
  between: { df: number; sumOfSquares: number; meanSquare: number };
  within: { df: number; sumOfSquares: number; meanSquare: number | null };
  total: { df: number; sumOfSquares: number };
  /** The ratio of the mean squares and its upper tail; null with the reason where there is no error to judge by. */
  f: number | null;
  p: number | null;
  reason: string | null;
}

/** Error below this part of the total sum of squares, or of the raw squares, is rounding and nothing else. */
const noiseOfTotal = 1e-20;
const noiseOfSquares = 1e-29;

/**
 * The one-way analysis of variance of groups of complete numbers, equal in size or not: sums of squares
 * centred first and compensated, so that a large common offset takes nothing from F.
 *
 * Throws for fewer than two groups and for an empty group. F is null with a reason where every group has a
 * single value, or where the values within groups do not differ but by rounding.
 *
 * Reference: G. W. Snedecor and W. G. Cochran (1980), Statistical Methods, 7th edition, chapter 12.
 *
 * @example oneWaySumsOfSquares([[1, 2, 3], [3, 4, 5]]).f // 6
 */
export function oneWaySumsOfSquares(groups: readonly (readonly number[])[]): OneWaySumsOfSquares {
  if (groups.length < 2) {
    throw new RangeError(`oneWaySumsOfSquares requires at least two groups, not ${groups.length}`);
  }
  if (groups.some((group) => group.length === 0)) {
    throw new RangeError('oneWaySumsOfSquares requires at least one value in each group');
  }
  const all = groups.flat();
  const { deviations, scale } = centred(all);
  const overall = sum(deviations) / all.length;
  let start = 0;
  const parts = groups.map((group) => {
    const own = deviations.subarray(start, (start += group.length));
    const mean = sum(own) / own.length;
    const leftOver = sum(own.map((value) => value - mean));
    const squares = sum(own.map((value) => (value - mean) ** 2)) - leftOver ** 2 / own.length;
    return { within: squares, between: own.length * (mean - overall) ** 2 };
  });
  const between = sum(parts.map((part) => part.between)) / scale ** 2;
  const within = Math.max(0, sum(parts.map((part) => part.within))) / scale ** 2;
  const dfBetween = groups.length - 1;
  const dfWithin = all.length - groups.length;
  const reason = noErrorReason(dfWithin, within, between + within, sum(all.map((value) => value * value)));
  const f = reason === null ? between / dfBetween / (within / dfWithin) : null;
  return {
    groups: groups.length,
    n: all.length,
    means: groups.map((group) => meanOf(group)),
    between: { df: dfBetween, sumOfSquares: between, meanSquare: between / dfBetween },
    within: { df: dfWithin, sumOfSquares: within, meanSquare: dfWithin > 0 ? within / dfWithin : null },
    total: { df: all.length - 1, sumOfSquares: between + within },
    f,
    p: f === null ? null : fUpperTail(f, dfBetween, dfWithin),
    reason,
  };
}

function noErrorReason(dfWithin: number, within: number, total: number, squares: number): string | null {
  if (dfWithin === 0)
    return 'each group has a single value, so nothing shows how much values of a group differ';
  if (within <= noiseOfTotal * total || within <= noiseOfSquares * squares) {
    return 'values within the groups do not differ, so there is no error to judge by';
  }
  return null;
}
