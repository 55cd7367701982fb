import { centred } from './centred.ts';
import { normalUpperQuantile, normalUpperTail } from './distributions/normal.ts';
import { sorted } from './quantile.ts';
import { present, type Recorded } from './statistic.ts';
import { sum } from './sum.ts';

export type ShapiroWilk =
  | { w: number; p: number; n: number; missing: number }
  | { w: null; p: null; reason: string; n: number; missing: number };

const polynomial = (coefficients: readonly number[], x: number) =>
  coefficients.reduceRight((value, coefficient) => value * x + coefficient, 0);

/** Royston's polynomials in 1 / sqrt(n) for the two outermost weights. */
const outermost = [0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056];
const second = [0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633];

/** Weights of the smaller half of n sorted values, outermost first: those of the larger half are their mirror. */
function halfWeights(n: number): number[] {
  if (n === 3) return [Math.SQRT1_2];
  const scores = Array.from({ length: Math.floor(n / 2) }, (_, index) =>
    normalUpperQuantile((index + 1 - 0.375) / (n + 0.25)),
  );
  const squares = 2 * scores.reduce((total, score) => total + score * score, 0);
  const first = polynomial(outermost, 1 / Math.sqrt(n)) + scores[0]! / Math.sqrt(squares);
  const fixed = [first];
  if (n > 5) fixed.push(polynomial(second, 1 / Math.sqrt(n)) + scores[1]! / Math.sqrt(squares));
  const leftOfScores = fixed.reduce((left, _, index) => left - 2 * scores[index]! ** 2, squares);
  const leftOfWeights = fixed.reduce((left, weight) => left - 2 * weight * weight, 1);
  const scale = Math.sqrt(leftOfScores / leftOfWeights);
  return scores.map((score, index) => fixed[index] ?? score / scale);
}

/** 1 - W, which keeps its digits where W is near 1. */
function oneLessW(ascending: readonly number[]): number {
  const n = ascending.length;
  const half = halfWeights(n);
  const { deviations } = centred(ascending);
  const range = deviations[n - 1]! - deviations[0]!;
  const scaled = deviations.map((value) => value / range);
  const mean = sum(scaled) / n;
  let [weights, values, both] = [0, 0, 0];
  for (let index = 0; index < n; index += 1) {
    const mirrored = n - 1 - index;
    const weight = index === mirrored ? 0 : Math.sign(index - mirrored) * half[Math.min(index, mirrored)]!;
    const value = scaled[index]! - mean;
    weights += weight * weight;
    values += value * value;
    both += weight * value;
  }
  const root = Math.sqrt(weights * values);
  return ((root - both) * (root + both)) / (weights * values);
}

/** The upper tail of Royston's normalising transformation of 1 - W; for three values the exact distribution. */
function chance(n: number, w1: number): number {
  if (n === 3)
    return Math.max(0, (6 / Math.PI) * (Math.asin(Math.sqrt(1 - w1)) - Math.asin(Math.sqrt(0.75))));
  const y = Math.log(w1);
  const logN = Math.log(n);
  if (n > 11) {
    const mean = polynomial([-1.5861, -0.31082, -0.083751, 0.0038915], logN);
    const deviation = Math.exp(polynomial([-0.4803, -0.082676, 0.0030302], logN));
    return normalUpperTail((y - mean) / deviation);
  }
  const limit = polynomial([-2.273, 0.459], n);
  if (y >= limit) return 1e-99;
  const mean = polynomial([0.544, -0.39978, 0.025054, -6.714e-4], n);
  const deviation = Math.exp(polynomial([1.3822, -0.77857, 0.062767, -0.0020322], n));
  return normalUpperTail((-Math.log(limit - y) - mean) / deviation);
}

/**
 * The Shapiro-Wilk test of normality, W and its p, for 3 to 5,000 values; missing values (null) are left out
 * and counted. Null with a reason outside that number, and where all values are equal but for rounding.
 *
 * Reference: P. Royston (1995), Remark AS R94: a remark on algorithm AS 181, the W-test for normality, Applied
 * Statistics 44, 547-551.
 *
 * @example shapiroWilk([1, 2, 3]) // { w: 1, p: 1, n: 3, missing: 0 }, to rounding
 */
export function shapiroWilk(values: Recorded): ShapiroWilk {
  const { numbers, missing } = present(values, 'shapiroWilk');
  const n = numbers.length;
  const none = (reason: string): ShapiroWilk => ({ w: null, p: null, reason, n, missing });
  if (n < 3 || n > 5000) return none(`the test of normality needs 3 to 5000 values, and ${n} are present`);
  const ascending = sorted(numbers);
  const largest = Math.max(Math.abs(ascending[0]!), Math.abs(ascending[n - 1]!));
  if (ascending[n - 1]! - ascending[0]! <= 1e-14 * largest) return none('all values are equal');
  const w1 = oneLessW(ascending);
  return { w: 1 - w1, p: w1 > 0 ? Math.min(1, chance(n, w1)) : 1, n, missing };
}
