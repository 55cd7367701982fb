import { type Matrix, dotProduct, matrixTimesVector, rowsOf } from '../linear-model/matrix.ts';
import { distinctOrders } from '../randomisation/arrangements.ts';
import { residualCoordinates } from './morans-i.ts';
import { residualBasis, weightsOnBasis } from './residual-basis.ts';
import type { SeededRandom } from '../seeded-random.ts';

export interface MoransIPermutationTest {
  readonly p: number;
  readonly arrangements: number;
  /** True where all arrangements were gone through; otherwise `draws` were drawn. */
  readonly exact: boolean;
  readonly draws: number;
}

const EXACT_UP_TO = 200_000;
const DRAWS = 20_000;
/** Values of I closer than this tie: mirror images of an arrangement differ by rounding only. */
const TIE = 1e-9;

/**
 * A permutation p of Moran's I of residuals, one-sided: residuals are dealt out anew over the positions and
 * the model fitted again (Freedman and Lane's way), and I counted where it is at least as large as the one
 * observed. All orders where they are at most 200,000 (8 positions), otherwise 20,000 drawn with the seeded
 * `random`, p then being (1 + count) / (1 + draws). Null where the model leaves fewer than two dimensions or
 * nothing varies.
 *
 * References: Cliff & Ord (1981) Spatial Processes, chapter 2; Freedman & Lane (1983) Journal of Business
 * and Economic Statistics 1, 292-298.
 */
export function moransIPermutationTest(
  responses: readonly number[],
  x: Matrix,
  weights: Matrix,
  random: SeededRandom,
): MoransIPermutationTest | null {
  const basis = residualBasis(x);
  if (basis.columns < 2) return null;
  const form = weightsOnBasis(basis, weights);
  const coordinates = residualCoordinates(basis, responses);
  if (!(dotProduct(coordinates, coordinates) > 0)) return null;
  const residuals = matrixTimesVector(basis, coordinates);
  const rows = rowsOf(basis);
  const ratioOf = (order: readonly number[]) => {
    const turned = new Float64Array(basis.columns);
    order.forEach((from, to) => {
      const row = rows[to]!;
      const value = residuals[from]!;
      for (let k = 0; k < turned.length; k++) turned[k]! += row[k]! * value;
    });
    return dotProduct(turned, matrixTimesVector(form, turned)) / dotProduct(turned, turned);
  };
  const n = responses.length;
  const inOrder = Array.from({ length: n }, (_, i) => i);
  const target = ratioOf(inOrder) - TIE;
  const arrangements = inOrder.reduce((product, i) => product * (i + 1), 1);
  if (arrangements <= EXACT_UP_TO) {
    const reached = distinctOrders(inOrder).filter((order) => ratioOf(order) >= target).length;
    return { p: reached / arrangements, arrangements, exact: true, draws: 0 };
  }
  const order = [...inOrder];
  let reached = 0;
  for (let draw = 0; draw < DRAWS; draw++) {
    random.shuffle(order);
    if (ratioOf(order) >= target) reached += 1;
  }
  return { p: (1 + reached) / (1 + DRAWS), arrangements, exact: false, draws: DRAWS };
}
