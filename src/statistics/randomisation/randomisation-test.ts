import { distinctOrders, numberOfArrangements } from './arrangements.ts';
import { exactIntegers, leastCommonMultiple } from './exact-integers.ts';
import { type TreatmentForm, treatmentForm } from './treatment-form.ts';
import type { SeededRandom } from '../seeded-random.ts';

/** An experimental unit: what was weighed on it, its block and its treatment, each numbered from 0. */
export interface RandomisedUnit {
  /** Sum of the unit's values and how many they are: its mean is compared. */
  readonly total: number;
  readonly count: number;
  readonly block: number;
  readonly treatment: number;
}

export interface RandomisationTest {
  /** F of unit means, treatments after blocks; null where nothing is left beside the treatments. */
  readonly f: number | null;
  /** Sum of squares of treatments after blocks, of unit means. */
  readonly sumOfSquares: number;
  readonly p: number;
  /** Number of arrangements that the design permits. */
  readonly arrangements: number;
  /** True where all of them were gone through; otherwise `draws` were drawn. */
  readonly exact: boolean;
  readonly draws: number;
  /**
   * The least p that any weights could give: the share of arrangements that compare the units as the one used
   * does, only the names of treatments exchanged. Where they are drawn, 1 / (1 + draws) or more.
   */
  readonly leastP: number;
}

export type RandomisationResult = RandomisationTest | { readonly reason: string };

/** Up to here every arrangement is gone through ... */
export const EXACT_UP_TO = 200_000;
/** ... beyond it so many are drawn. */
export const DRAWS = 20_000;

/**
 * Randomisation test: how often an arrangement drawn as the design was would show treatments at least as
 * far apart, were all treatments alike. Treatments are exchanged between the units of a block only; a
 * completely randomised design is one block, in a split plot blocks are the whole plots for the factor on
 * sub-plots and the blocks for that on whole plots, and to test one factor of several the others' levels
 * join the block. The statistic is F of unit means, treatments adjusted for blocks; arrangements are
 * compared by its treatment sum of squares, which orders them alike, in whole numbers, so that ties are
 * ties. p is the share of arrangements at least as large as the one used; where arrangements are drawn,
 * (1 + their number) / (1 + draws), the arrangement used being one of them. `random` is seeded.
 *
 * References: Fisher (1935) The Design of Experiments, section 21; Edgington & Onghena (2007)
 * Randomization Tests, 4th ed., chapters 3 and 4; Phipson & Smyth (2010) Statistical Applications in
 * Genetics and Molecular Biology 9, article 39 (the 1 added).
 */
export function randomisationTest(
  units: readonly RandomisedUnit[],
  random: SeededRandom,
): RandomisationResult {
  const blocks = blocksOf(units);
  const treatments = Math.max(...units.map(({ treatment }) => treatment)) + 1;
  const incidence = blocks.map((members) => {
    const counts = new Array<number>(treatments).fill(0);
    for (const i of members) counts[units[i]!.treatment]! += 1;
    return counts;
  });
  if (treatments < 2) return { reason: 'there is one treatment only' };
  const multiple = blocks.reduce((common, members) => leastCommonMultiple(common, members.length), 1);
  const form = treatmentForm(incidence, multiple);
  if (form === null) return { reason: 'not all treatments can be compared within blocks' };
  const { integers, scale } = exactIntegers(
    units.map(({ total }) => total),
    units.map(({ count }) => count),
    2 * multiple,
  );
  const pools = blocks.map((members) => poolOf(members, units, integers, multiple));
  const observed = new Float64Array(treatments);
  for (const { deviations, labels } of pools) addTotals(observed, deviations, labels);
  const within = pools.reduce((sum, pool) => sum + pool.squares, 0);
  if (within === 0) return { reason: 'units of a block do not differ' };

  const isAtLeast = comparison(form, observed);
  const arrangements = numberOfArrangements(pools.map(({ labels }) => labels));
  const exact = arrangements <= EXACT_UP_TO;
  const reached = exact
    ? countAll(pools, treatments, isAtLeast)
    : countDrawn(pools, treatments, isAtLeast, random);
  const sumOfSquares = form.approximate(observed) / (multiple * scale * scale);
  const errorSumOfSquares = within / (scale * scale) - sumOfSquares;
  const errorDf = units.length - blocks.length - (treatments - 1);
  const hasError = errorDf > 0 && errorSumOfSquares > 1e-12 * sumOfSquares;
  return {
    f: hasError ? sumOfSquares / (treatments - 1) / (errorSumOfSquares / errorDf) : null,
    sumOfSquares,
    p: exact ? reached / arrangements : (1 + reached) / (1 + DRAWS),
    arrangements,
    exact,
    draws: exact ? 0 : DRAWS,
    leastP: Math.max(exact ? 0 : 1 / (1 + DRAWS), renamings(incidence) / arrangements),
  };
}

/**
 * How many arrangements are as good as one: names of treatments may be exchanged where each block still holds as
 * many of each, and in blocks of two units every pair may be turned about, which turns each difference's sign.
 */
function renamings(incidence: readonly (readonly number[])[]): number {
  const alike = new Map<string, number>();
  const pairs = incidence.every((counts) => counts.reduce((sum, count) => sum + count, 0) <= 2);
  // Of two treatments, pairs turned about are names exchanged.
  let ways = pairs && incidence[0]!.length > 2 ? 2 : 1;
  incidence[0]!.forEach((_, treatment) => {
    const key = incidence.map((counts) => counts[treatment]).join();
    const count = (alike.get(key) ?? 0) + 1;
    alike.set(key, count);
    ways *= count;
  });
  return ways;
}

/** A block's units: deviations from the block's mean times a common multiple, whole; their treatments. */
interface Pool {
  readonly deviations: readonly number[];
  readonly labels: readonly number[];
  readonly squares: number;
}

function poolOf(
  members: readonly number[],
  units: readonly RandomisedUnit[],
  integers: readonly number[],
  multiple: number,
): Pool {
  const total = members.reduce((sum, i) => sum + integers[i]!, 0);
  const deviations = members.map((i) => multiple * integers[i]! - (multiple / members.length) * total);
  const squares = deviations.reduce((sum, deviation) => sum + (deviation / multiple) ** 2, 0);
  return { deviations, labels: members.map((i) => units[i]!.treatment), squares };
}

function blocksOf(units: readonly RandomisedUnit[]): number[][] {
  const blocks = new Map<number, number[]>();
  units.forEach(({ block }, i) => {
    const members = blocks.get(block);
    if (members) members.push(i);
    else blocks.set(block, [i]);
  });
  return [...blocks.values()];
}

function addTotals(totals: Float64Array, deviations: readonly number[], labels: readonly number[]): void {
  labels.forEach((treatment, k) => (totals[treatment]! += deviations[k]!));
}

/** Compares totals with the observed ones: by rounded arithmetic where that decides, else exactly. */
function comparison(form: TreatmentForm, observed: Float64Array): (totals: Float64Array) => boolean {
  const target = form.approximate(observed);
  const exactTarget = form.exact(observed);
  const margin = 1e-9 * target;
  return (totals) => {
    const difference = form.approximate(totals) - target;
    if (Math.abs(difference) > margin) return difference > 0;
    return form.exact(totals) >= exactTarget;
  };
}

function countAll(
  pools: readonly Pool[],
  treatments: number,
  isAtLeast: (totals: Float64Array) => boolean,
): number {
  const choices = pools.map(({ deviations, labels }) =>
    distinctOrders(labels).map((order) => {
      const totals = new Float64Array(treatments);
      addTotals(totals, deviations, order);
      return totals;
    }),
  );
  const sums = choices.map(() => new Float64Array(treatments));
  const countFrom = (block: number, before: Float64Array): number => {
    const sum = sums[block]!;
    let count = 0;
    for (const totals of choices[block]!) {
      for (let t = 0; t < treatments; t++) sum[t] = before[t]! + totals[t]!;
      if (block < choices.length - 1) count += countFrom(block + 1, sum);
      else if (isAtLeast(sum)) count += 1;
    }
    return count;
  };
  return countFrom(0, new Float64Array(treatments));
}

function countDrawn(
  pools: readonly Pool[],
  treatments: number,
  isAtLeast: (totals: Float64Array) => boolean,
  random: SeededRandom,
): number {
  // This loop is where a trial's time goes: plain arrays of numbers, no closures.
  const blocks = pools.map(({ deviations, labels }) => ({
    deviations: Float64Array.from(deviations),
    labels: [...labels],
  }));
  const totals = new Float64Array(treatments);
  let count = 0;
  for (let draw = 0; draw < DRAWS; draw++) {
    totals.fill(0);
    for (const { deviations, labels } of blocks) {
      random.shuffle(labels);
      for (let unit = 0; unit < labels.length; unit++) totals[labels[unit]!]! += deviations[unit]!;
    }
    if (isAtLeast(totals)) count += 1;
  }
  return count;
}
