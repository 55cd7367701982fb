import { householderQr, type QrFactors, rotate } from './householder-qr.ts';
import { columnOf, dotProduct, type Matrix, matrixFromColumns } from './matrix.ts';
import type { ResidualSpace } from './restricted-likelihood.ts';

/**
 * Projects out the fixed terms (the factors `fixed` of their matrix) and turns the rest so that the
 * random terms' columns fill as few dimensions as they can; the likelihood then works on matrices of that
 * size. `within` adds what varies within units: residual alone.
 */
export function residualSpace(
  fixed: QrFactors,
  responses: Float64Array,
  random: readonly Matrix[],
  within: { readonly withinDf: number; readonly withinSumOfSquares: number },
): ResidualSpace {
  const rank = fixed.independent.length;
  const beyondFixed = (vector: Float64Array) => rotate(fixed, vector).subarray(rank);
  const height = fixed.rows - rank;
  const y = beyondFixed(responses);
  const columns = random.map((z) => Array.from({ length: z.columns }, (_, j) => beyondFixed(columnOf(z, j))));
  const turn = householderQr(matrixFromColumns(height, columns.flat()), 1e-12);
  const size = turn.independent.length;
  const turned = rotate(turn, y);
  const rest = turned.subarray(size);
  return {
    y: turned.slice(0, size),
    random: columns.map((group) =>
      matrixFromColumns(
        size,
        group.map((column) => rotate(turn, column).subarray(0, size)),
      ),
    ),
    restDf: height - size + within.withinDf,
    restSumOfSquares: dotProduct(rest, rest) + within.withinSumOfSquares,
  };
}
