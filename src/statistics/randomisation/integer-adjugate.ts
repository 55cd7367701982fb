/**
 * The adjugate (the inverse times the determinant) of a symmetric positive definite matrix of whole
 * numbers, by elimination without fractions. Null where a pivot is zero: the matrix is singular.
 *
 * Reference: Bareiss (1968) Mathematics of Computation 22, 565-578.
 *
 * @example integerAdjugate([[2n, 1n], [1n, 3n]]) // [[3n, -1n], [-1n, 2n]]
 */
export function integerAdjugate(matrix: readonly (readonly bigint[])[]): bigint[][] | null {
  const size = matrix.length;
  const work = matrix.map((row, i) => [
    ...row,
    ...Array.from({ length: size }, (_, j) => (i === j ? 1n : 0n)),
  ]);
  let previous = 1n;
  for (let k = 0; k < size; k++) {
    const pivotRow = work[k]!;
    const pivot = pivotRow[k]!;
    if (pivot === 0n) return null;
    work.forEach((row, i) => {
      if (i === k) return;
      const factor = row[k]!;
      for (let j = 0; j < 2 * size; j++) row[j] = (row[j]! * pivot - factor * pivotRow[j]!) / previous;
    });
    previous = pivot;
  }
  return work.map((row) => row.slice(size));
}
