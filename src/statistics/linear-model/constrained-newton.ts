import { choleskyFactor, choleskySolve } from './cholesky.ts';
import { entryOf, type Matrix, zeroMatrix } from './matrix.ts';

/** A function's value, slopes and two matrices of second derivatives, the second always usable. */
export interface Evaluation {
  readonly deviance: number;
  readonly gradient: Float64Array;
  readonly observed: Matrix;
  readonly expected: Matrix;
}

export interface Minimum<E extends Evaluation> {
  readonly at: Float64Array;
  readonly evaluation: E;
  readonly iterations: number;
}

const ITERATIONS = 200;
/** Steps smaller than this beside the values end the search: well inside 1e-9 once Newton converges. */
const STEP = 1e-11;
/** A variance below this share of the largest is taken for 0. */
const NOTHING = 1e-10;

/**
 * Minimises a smooth function of variances that are at least 0 (the first, above 0), by Newton steps on
 * those not held at 0, halved until the function falls; where the observed second derivatives are not
 * positive definite, or lead nowhere, by the expected ones (Fisher's scoring). Null where no minimum is
 * reached.
 *
 * Reference: Nocedal & Wright (2006) Numerical Optimization, 2nd ed., sections 3.3 and 16.7.
 */
export function constrainedNewton<E extends Evaluation>(
  evaluate: (at: Float64Array) => E | null,
  start: Float64Array,
): Minimum<E> | null {
  let at = start;
  let evaluation = evaluate(at);
  for (let iteration = 1; evaluation !== null && iteration <= ITERATIONS; iteration++) {
    const { gradient, observed, expected } = evaluation;
    const free = [...at.keys()].filter((k) => at[k]! > 0 || gradient[k]! < 0);
    const next =
      search(evaluate, at, evaluation, directionFrom(observed, gradient, free)) ??
      search(evaluate, at, evaluation, directionFrom(expected, gradient, free));
    if (next === null) return null;
    const moved = Math.max(...at.map((value, k) => Math.abs(next.at[k]! - value)));
    const size = Math.max(...at);
    ({ at, evaluation } = next);
    if (moved <= STEP * size && isMinimum(at, evaluation)) return { at, evaluation, iterations: iteration };
  }
  return null;
}

/** Whether no variance held at 0 wants to rise. */
function isMinimum(at: Float64Array, { gradient, expected }: Evaluation): boolean {
  return at.every((value, k) => value > 0 || gradient[k]! >= -1e-9 * Math.sqrt(entryOf(expected, k, k)));
}

function directionFrom(
  curvature: Matrix,
  gradient: Float64Array,
  free: readonly number[],
): Float64Array | null {
  const reduced = zeroMatrix(free.length, free.length);
  free.forEach((i, a) => {
    free.forEach((j, b) => {
      reduced.values[b * free.length + a] = entryOf(curvature, i, j);
    });
  });
  const lower = choleskyFactor(reduced);
  if (lower === null) return null;
  const step = choleskySolve(
    lower,
    free.map((k) => -gradient[k]!),
  );
  const direction = new Float64Array(gradient.length);
  free.forEach((k, a) => {
    direction[k] = step[a]!;
  });
  return direction;
}

function search<E extends Evaluation>(
  evaluate: (at: Float64Array) => E | null,
  at: Float64Array,
  from: E,
  direction: Float64Array | null,
): { at: Float64Array; evaluation: E } | null {
  if (direction === null) return null;
  const largest = Math.max(...at);
  const slack = 1e-12 * (1 + Math.abs(from.deviance));
  for (let length = 1; length > 1e-9; length /= 2) {
    const to = at.map((value, k) => {
      const moved = value + length * direction[k]!;
      if (k === 0) return Math.max(moved, value / 10);
      return moved > NOTHING * largest ? moved : 0;
    });
    const evaluation = evaluate(to);
    if (evaluation !== null && evaluation.deviance <= from.deviance + slack) return { at: to, evaluation };
  }
  return null;
}
