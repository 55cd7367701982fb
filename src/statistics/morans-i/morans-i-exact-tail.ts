import { dotProduct, type Matrix, matrixTimesVector } from '../linear-model/matrix.ts';
import { symmetricEigenvalues } from '../linear-model/symmetric-eigenvalues.ts';
import { residualCoordinates } from './morans-i.ts';
import { chanceFormIsPositive } from './quadratic-form-tail.ts';
import { residualBasis, weightsOnBasis } from './residual-basis.ts';

/**
 * The exact one-sided p of Moran's I of residuals of independent normal values: I is a ratio of quadratic
 * forms in them, and exceeds the one observed where the form with K' W K - (observed ratio) is positive.
 * Null where the model leaves fewer than two dimensions or nothing varies. The work grows with the third
 * power of the observations: for containers of up to a few hundred positions.
 *
 * Reference: Tiefelsdorf & Boots (1995) Environment and Planning A 27, 985-999.
 */
export function moransIExactTail(responses: readonly number[], x: Matrix, weights: Matrix): number | null {
  const basis = residualBasis(x);
  if (basis.columns < 2) return null;
  const form = weightsOnBasis(basis, weights);
  const coordinates = residualCoordinates(basis, responses);
  const squares = dotProduct(coordinates, coordinates);
  if (!(squares > 0)) return null;
  const ratio = dotProduct(coordinates, matrixTimesVector(form, coordinates)) / squares;
  const shifted = symmetricEigenvalues(form).map((value) => value - ratio);
  return shifted.every((value) => Math.abs(value) < 1e-12) ? null : chanceFormIsPositive(shifted);
}
