import { householderQr, rotateBack } from '../linear-model/householder-qr.ts';
import {
  columnOf,
  dotProduct,
  type Matrix,
  matrixFromColumns,
  matrixTimesVector,
  zeroMatrix,
} from '../linear-model/matrix.ts';

/**
 * An orthonormal basis K of what a model leaves of n observations: n rows, n - rank(X) columns, K' X = 0.
 * The residuals are K K' y.
 */
export function residualBasis(x: Matrix): Matrix {
  const qr = householderQr(x);
  const rank = qr.independent.length;
  return matrixFromColumns(
    x.rows,
    Array.from({ length: x.rows - rank }, (_, k) => {
      const unit = new Float64Array(x.rows);
      unit[rank + k] = 1;
      return rotateBack(qr, unit);
    }),
  );
}

/** The weights between observations as they work on the basis: K' W K. */
export function weightsOnBasis(basis: Matrix, weights: Matrix): Matrix {
  const form = zeroMatrix(basis.columns, basis.columns);
  for (let b = 0; b < basis.columns; b++) {
    const spread = matrixTimesVector(weights, columnOf(basis, b));
    for (let a = 0; a < basis.columns; a++) {
      form.values[b * basis.columns + a] = dotProduct(columnOf(basis, a), spread);
    }
  }
  return form;
}
