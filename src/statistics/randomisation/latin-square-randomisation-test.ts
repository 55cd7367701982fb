import { distinctOrders } from './arrangements.ts';
import { exactIntegers } from './exact-integers.ts';
import { DRAWS, EXACT_UP_TO, type RandomisationResult } from './randomisation-test.ts';
import type { SeededRandom } from '../seeded-random.ts';

/** A plot of a Latin square; row, column and treatment are numbered from 0. */
export interface LatinSquarePlot {
  readonly total: number;
  readonly count: number;
  readonly row: number;
  readonly column: number;
  readonly treatment: number;
}

/**
 * Randomisation test for a complete Latin square: the square used is set again with its rows and its
 * columns in every order (their orders multiplied are the arrangements), or in orders drawn where those
 * are too many; exchanging treatments' names changes nothing. Statistic, ties and p as in
 * randomisationTest.
 *
 * Reference: Fisher (1935) The Design of Experiments, sections 33 to 35.
 */
export function latinSquareRandomisationTest(
  plots: readonly LatinSquarePlot[],
  random: SeededRandom,
): RandomisationResult {
  const size = Math.round(Math.sqrt(plots.length));
  const square = Array.from({ length: size }, () => new Array<number>(size).fill(-1));
  for (const { row, column, treatment } of plots) {
    if (square[row]?.[column] !== -1) return { reason: 'the Latin square is not complete' };
    square[row]![column] = treatment;
  }
  if (size < 2 || !isLatin(square)) return { reason: 'the Latin square is not complete' };
  const { integers, scale } = exactIntegers(
    plots.map(({ total }) => total),
    plots.map(({ count }) => count),
    4 * size * size,
  );
  const grid = square.map((row) => row.map(() => 0));
  plots.forEach(({ row, column }, k) => (grid[row]![column] = integers[k]!));
  // Deviations from row and column means, times the square of the size: whole numbers.
  const deviations = doublyCentred(grid);
  const within = deviations.flat().reduce((sum, value) => sum + (value / (size * size)) ** 2, 0);
  if (within === 0) return { reason: 'plots do not differ beside rows and columns' };

  const inOrder = Array.from({ length: size }, (_, i) => i);
  const sums = (rows: readonly number[], columns: readonly number[]) =>
    totalsOf(deviations, square, rows, columns);
  const observed = sums(inOrder, inOrder);
  const target = squares(observed);
  const exactTarget = exactSquares(observed);
  const isAtLeast = (totals: Float64Array) => {
    const difference = squares(totals) - target;
    if (Math.abs(difference) > 1e-9 * target) return difference > 0;
    return exactSquares(totals) >= exactTarget;
  };

  const orders = inOrder.reduce((product, i) => product * (i + 1), 1);
  const arrangements = orders * orders;
  const exact = arrangements <= EXACT_UP_TO;
  let reached = 0;
  let alike = 0;
  if (exact) {
    const all = distinctOrders(inOrder);
    for (const rows of all) {
      for (const columns of all) {
        if (isAtLeast(sums(rows, columns))) reached += 1;
        if (isRenamed(square, rows, columns)) alike += 1;
      }
    }
  } else {
    const [rows, columns] = [[...inOrder], [...inOrder]];
    for (let draw = 0; draw < DRAWS; draw++) {
      random.shuffle(rows);
      random.shuffle(columns);
      if (isAtLeast(sums(rows, columns))) reached += 1;
    }
  }
  const sumOfSquares = target / size / (size * size * scale) ** 2;
  const errorSumOfSquares = within / (scale * scale) - sumOfSquares;
  const errorDf = (size - 1) * (size - 2);
  const hasError = errorDf > 0 && errorSumOfSquares > 1e-12 * sumOfSquares;
  return {
    f: hasError ? sumOfSquares / (size - 1) / (errorSumOfSquares / errorDf) : null,
    sumOfSquares,
    p: exact ? reached / arrangements : (1 + reached) / (1 + DRAWS),
    arrangements,
    exact,
    draws: exact ? 0 : DRAWS,
    leastP: exact ? alike / arrangements : 1 / (1 + DRAWS),
  };
}

/** Whether the square with rows and columns in these orders is the same square, names of treatments exchanged. */
function isRenamed(
  square: readonly (readonly number[])[],
  rows: readonly number[],
  columns: readonly number[],
): boolean {
  const names = columns.map((column) => square[rows[0]!]![column]!);
  const renamed = new Map(square[0]!.map((treatment, j) => [treatment, names[j]]));
  return square.every((row, i) =>
    row.every((treatment, j) => renamed.get(treatment) === square[rows[i]!]![columns[j]!]),
  );
}

function isLatin(square: readonly (readonly number[])[]): boolean {
  const complete = (list: readonly number[]) =>
    new Set(list).size === square.length && list.every((t) => t >= 0 && t < square.length);
  return square.every(complete) && square.every((_, j) => complete(square.map((row) => row[j]!)));
}

function doublyCentred(grid: readonly (readonly number[])[]): number[][] {
  const size = grid.length;
  const rowSums = grid.map((row) => row.reduce((sum, value) => sum + value, 0));
  const columnSums = grid.map((_, j) => grid.reduce((sum, row) => sum + row[j]!, 0));
  const total = rowSums.reduce((sum, value) => sum + value, 0);
  return grid.map((row, i) =>
    row.map((value, j) => size * size * value - size * (rowSums[i]! + columnSums[j]!) + total),
  );
}

function totalsOf(
  deviations: readonly (readonly number[])[],
  square: readonly (readonly number[])[],
  rows: readonly number[],
  columns: readonly number[],
): Float64Array {
  const totals = new Float64Array(square.length);
  deviations.forEach((row, i) => {
    const treatments = square[rows[i]!]!;
    row.forEach((value, j) => (totals[treatments[columns[j]!]!]! += value));
  });
  return totals;
}

function squares(totals: Float64Array): number {
  return totals.reduce((sum, value) => sum + value * value, 0);
}

function exactSquares(totals: Float64Array): bigint {
  return Array.from(totals, BigInt).reduce((sum, value) => sum + value * value, 0n);
}
