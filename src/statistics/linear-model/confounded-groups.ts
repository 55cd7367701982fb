import { type FixedEffects, NO_DEGREES_OF_FREEDOM } from './fixed-effects.ts';
import { householderQr, rotate, solveTriangle } from './householder-qr.ts';
import { type Matrix, zeroMatrix } from './matrix.ts';

/**
 * Marks what cannot be judged because random groups coincide with fixed treatments (one tank for each
 * strength): the groups' own variance then enters every contrast that they tell apart, and every mean, but
 * cannot be estimated. Contrasts within groups are not touched. `x` is a matrix of the model's columns and
 * `groups` the group of each of its rows; groups that the fixed terms do not take up wholly are a
 * programmer's error: they belong among the random terms. Groups that coincide with blocks are not to be
 * marked, since a mean leaves out the variance between blocks.
 */
export function withConfoundedGroups(
  effects: FixedEffects,
  x: Matrix,
  groups: readonly number[],
): FixedEffects {
  const qr = householderQr(x);
  const rank = qr.independent.length;
  const share = zeroMatrix(x.columns, x.columns);
  for (const group of new Set(groups)) {
    const rotated = rotate(
      qr,
      groups.map((other) => (other === group ? 1 : 0)),
    );
    if (rotated.subarray(rank).some((value) => Math.abs(value) > 1e-7)) {
      throw new Error('withConfoundedGroups requires groups that the fixed terms take up');
    }
    // What one unit of error of this group adds to each coefficient.
    const pull = new Float64Array(x.columns);
    solveTriangle(qr, rotated).forEach((value, k) => (pull[qr.independent[k]!] = value));
    for (let j = 0; j < x.columns; j++) {
      for (let i = 0; i < x.columns; i++) share.values[j * x.columns + i]! += pull[i]! * pull[j]!;
    }
  }
  return { ...effects, withoutError: [...effects.withoutError, { share, reason: NO_DEGREES_OF_FREEDOM }] };
}
