import { normalUpperTail } from '../distributions/normal.ts';
import { NO_DEGREES_OF_FREEDOM, NO_VARIATION } from '../linear-model/fixed-effects.ts';
import {
  crossProduct,
  dotProduct,
  type Matrix,
  matrixFromColumns,
  matrixTimesVector,
} from '../linear-model/matrix.ts';
import { roundingNoise } from '../linear-model/rounding-noise.ts';
import { meanOf } from '../mean.ts';
import { sum } from '../sum.ts';
import { residualBasis, weightsOnBasis } from './residual-basis.ts';

export type MoransI =
  | {
      readonly i: number;
      /** Expectation and variance of I for the residuals of independent normal values. */
      readonly expected: number;
      readonly variance: number;
      /** One-sided: the chance of an I as large, by the normal approximation; null for a variance of 0. */
      readonly p: number | null;
    }
  | { readonly i: null; readonly reason: string };

/**
 * Moran's I of the residuals of a linear model: (n / S) e' W e / e' e, with e the residuals of the
 * responses on the model matrix X and S the sum of all weights. Positive where neighbours are alike. Its
 * moments are Cliff and Ord's for residuals, not those of a single sample: with A = K' W K, K a basis of
 * what the model leaves, and m = n - rank(X), the mean is (n / S) tr(A) / m and the mean square
 * (n / S)^2 (2 tr(A A) + tr(A)^2) / (m (m + 2)).
 * `weights` is symmetric with a zero diagonal: 1 for neighbours, 0 for others.
 *
 * References: Moran (1950) Biometrika 37, 17-23; Cliff & Ord (1981) Spatial Processes, chapter 8.
 */
export function moransI(responses: readonly number[], x: Matrix, weights: Matrix): MoransI {
  requireWeights(responses, weights);
  const total = sum(weights.values);
  if (total === 0) return { i: null, reason: 'no observation has a neighbour' };
  const basis = residualBasis(x);
  if (basis.columns === 0) return { i: null, reason: NO_DEGREES_OF_FREEDOM };
  const coordinates = residualCoordinates(basis, responses);
  const squares = dotProduct(coordinates, coordinates);
  if (squares <= roundingNoise(responses)) return { i: null, reason: NO_VARIATION };
  const form = weightsOnBasis(basis, weights);
  const scale = responses.length / total;
  const m = basis.columns;
  const trace = sum(Array.from({ length: m }, (_, k) => form.values[k * m + k]!));
  const square = dotProduct(form.values, form.values);
  // Where the model takes up all that neighbours could share, what is left of the weights is rounding.
  if (square <= 1e-20 * dotProduct(weights.values, weights.values))
    return { i: 0, expected: 0, variance: 0, p: null };
  const i = (scale * dotProduct(coordinates, matrixTimesVector(form, coordinates))) / squares;
  const expected = (scale * trace) / m;
  // (2 tr(AA) + tr(A)^2) / (m (m + 2)) - (tr(A) / m)^2, gathered so that nothing cancels but what must.
  const variance = (2 * scale ** 2 * (square - trace ** 2 / m)) / (m * (m + 2));
  const certain = variance <= 1e-14 * scale ** 2 * square;
  return {
    i,
    expected,
    variance: certain ? 0 : variance,
    p: certain ? null : normalUpperTail((i - expected) / Math.sqrt(variance)),
  };
}

/** K' y: the residuals on their basis. */
export function residualCoordinates(basis: Matrix, responses: readonly number[]): Float64Array {
  const centre = meanOf(responses);
  const centred = responses.map((value) => value - centre);
  const shift = crossProduct(
    basis,
    matrixFromColumns(basis.rows, [new Float64Array(basis.rows).fill(centre)]),
  );
  return crossProduct(basis, matrixFromColumns(basis.rows, [centred])).values.map(
    (value, k) => value + shift.values[k]!,
  );
}

function requireWeights(responses: readonly number[], weights: Matrix): void {
  const n = responses.length;
  if (weights.rows !== n || weights.columns !== n) {
    throw new Error(`moransI requires weights of ${n} by ${n}, not ${weights.rows} by ${weights.columns}`);
  }
  for (let j = 0; j < n; j++) {
    for (let i = 0; i <= j; i++) {
      const same = weights.values[j * n + i] === weights.values[i * n + j];
      if (!same || (i === j && weights.values[i * n + i] !== 0)) {
        throw new Error('moransI requires symmetric weights with a zero diagonal');
      }
    }
  }
}
