import { choleskyFactor, choleskyInverse } from './cholesky.ts';
import { entryOf, type Matrix, zeroMatrix } from './matrix.ts';

/**
 * Sampling covariance of variances estimated by (restricted) maximum likelihood: twice the inverse of the
 * deviance's observed second derivatives, over the variances that are not at zero; the others have zero
 * rows. Null where that information is not positive definite.
 */
export function varianceCovariance(variances: Float64Array, observed: Matrix): Matrix | null {
  const free = [...variances.keys()].filter((k) => variances[k]! > 0);
  const reduced = zeroMatrix(free.length, free.length);
  free.forEach((i, a) => {
    free.forEach((j, b) => {
      reduced.values[b * free.length + a] = entryOf(observed, i, j);
    });
  });
  const lower = choleskyFactor(reduced);
  if (lower === null) return null;
  const inverse = choleskyInverse(lower);
  const covariance = zeroMatrix(variances.length, variances.length);
  free.forEach((i, a) => {
    free.forEach((j, b) => {
      covariance.values[j * variances.length + i] = 2 * entryOf(inverse, a, b);
    });
  });
  return covariance;
}
