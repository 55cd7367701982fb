/** A symmetric matrix as rows. */
export type SymmetricMatrix = readonly (readonly number[])[];

/**
 * The correlations of quantities from their covariances. Throws where a variance is not positive.
 *
 * @example correlationOf([[4, 2], [2, 9]]) // [[1, 1 / 3], [1 / 3, 1]]
 */
export function correlationOf(covariance: SymmetricMatrix): number[][] {
  const deviations = covariance.map((row, index) => {
    const variance = row[index]!;
    if (!(variance > 0 && variance < Infinity)) {
      throw new RangeError(`correlationOf requires positive variances, not ${variance}`);
    }
    return Math.sqrt(variance);
  });
  return covariance.map((row, i) =>
    row.map((value, j) => (i === j ? 1 : value / (deviations[i]! * deviations[j]!))),
  );
}

/**
 * The correlations of differences from a control between independent means: the control's variance is what two
 * differences share. Each is b_i b_j with b_i squared the control's part of the variance of difference i.
 *
 * @param control the variance of the control's mean
 * @param others the variances of the other means
 * @example correlationsWithControl(1, [1, 1])[0][1] // 0.5
 */
export function correlationsWithControl(control: number, others: readonly number[]): number[][] {
  return correlationOf(others.map((own, i) => others.map((_, j) => (i === j ? control + own : control))));
}

/** The indices of comparisons to keep: one of each set that are the same but for sign. */
export function distinctComparisons(correlation: SymmetricMatrix): number[] {
  const kept: number[] = [];
  for (let index = 0; index < correlation.length; index += 1) {
    if (kept.every((other) => Math.abs(correlation[index]![other]!) < 1 - 1e-10)) kept.push(index);
  }
  return kept;
}

/**
 * Factors b with correlation i, j equal to b_i b_j throughout (within 1e-8), each below 1 in size, or null where
 * the correlations have no such form. Two comparisons always have it.
 */
export function productFactors(correlation: SymmetricMatrix): number[] | null {
  const size = correlation.length;
  let [first, second, most] = [0, 0, 0];
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < i; j += 1) {
      if (Math.abs(correlation[i]![j]!) > most) [first, second, most] = [i, j, Math.abs(correlation[i]![j]!)];
    }
  }
  if (most < 1e-8) return new Array<number>(size).fill(0);
  const square = firstFactorSquared(correlation, first, second);
  if (square === null) return null;
  const own = Math.sqrt(square);
  const factors = correlation.map((row, index) => (index === first ? own : row[first]! / own));
  if (factors.some((factor) => Math.abs(factor) > 1 - 1e-10)) return null;
  const fits = correlation.every((row, i) =>
    row.every((value, j) => i === j || Math.abs(value - factors[i]! * factors[j]!) < 1e-8),
  );
  return fits ? factors : null;
}

/** b_i squared is r_ij r_ik / r_jk, from the third comparison for which the division is safest. */
function firstFactorSquared(correlation: SymmetricMatrix, i: number, j: number): number | null {
  let best = -1;
  for (let k = 0; k < correlation.length; k += 1) {
    if (k === i || k === j) continue;
    if (best === -1 || Math.abs(correlation[j]![k]!) > Math.abs(correlation[j]![best]!)) best = k;
  }
  const between = correlation[i]![j]!;
  if (best === -1 || Math.abs(correlation[j]![best]!) < 1e-8) return Math.abs(between);
  const square = (between * correlation[i]![best]!) / correlation[j]![best]!;
  return square > 0 && square < 1 ? square : null;
}

/**
 * Factors whose products come nearest the correlations, by alternating least squares, each held below 0.98 in
 * size. A starting point for correlations that are no products.
 */
export function nearestFactors(correlation: SymmetricMatrix): number[] {
  const size = correlation.length;
  const factors = correlation.map((row, index) => {
    const others = row.reduce((total, value, other) => total + (other === index ? 0 : value), 0) / (size - 1);
    return Math.sign(others || 1) * Math.sqrt(Math.min(0.9, Math.abs(others)) || 0.01);
  });
  for (let round = 0; round < 200; round += 1) {
    for (let i = 0; i < size; i += 1) {
      let [top, bottom] = [0, 1e-12];
      for (let j = 0; j < size; j += 1) {
        if (j === i) continue;
        top += correlation[i]![j]! * factors[j]!;
        bottom += factors[j]! ** 2;
      }
      factors[i] = Math.max(-0.98, Math.min(0.98, top / bottom));
    }
  }
  return factors;
}
