import { type Matrix, zeroMatrix } from './matrix.ts';

/**
 * Orthonormal contrasts between the levels of a factor: a matrix of `levels` rows and `levels` - 1
 * columns whose columns have length 1, are orthogonal to one another and sum to zero (Helmert's, scaled).
 *
 * @example sumToZeroContrasts(2).values // [-0.7071, 0.7071], the one column
 */
export function sumToZeroContrasts(levels: number): Matrix {
  const contrasts = zeroMatrix(levels, Math.max(levels - 1, 0));
  for (let j = 1; j < levels; j++) {
    const length = Math.sqrt(j * (j + 1));
    for (let i = 0; i < j; i++) contrasts.values[(j - 1) * levels + i] = -1 / length;
    contrasts.values[(j - 1) * levels + j] = j / length;
  }
  return contrasts;
}
