import type { SymmetricMatrix } from './correlation.ts';

/** The lower triangle L with L L' the matrix; where it is singular, the columns it does not need are 0. */
export function cholesky(matrix: SymmetricMatrix): Float64Array[] {
  const rows = matrix.map(() => new Float64Array(matrix.length));
  for (let i = 0; i < matrix.length; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let value = matrix[i]![j]!;
      for (let k = 0; k < j; k += 1) value -= rows[i]![k]! * rows[j]![k]!;
      if (i === j) rows[i]![i] = value > 1e-12 ? Math.sqrt(value) : 0;
      else rows[i]![j] = rows[j]![j] === 0 ? 0 : value / rows[j]![j]!;
    }
  }
  return rows;
}
