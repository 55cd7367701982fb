import { say } from '../../model/say.ts';
import type { PositionEffects } from '../../model/findings.ts';
import { leastSquares } from '../../statistics/linear-model/least-squares.ts';
import { modelTerms } from '../../statistics/linear-model/model-terms.ts';
import { moransI } from '../../statistics/morans-i/morans-i.ts';
import { moransIExactTail } from '../../statistics/morans-i/morans-i-exact-tail.ts';
import { groupCount, groupIndexes } from '../inference/grouping.ts';
import { treatmentKey } from '../treatments.ts';
import { rookNeighbours } from './neighbours.ts';
import type { PotsOfContainer } from './pots-of-container.ts';

/** Beyond so many positions the exact p takes long and differs little from the normal approximation. */
const exactUpTo = 100;

/** What treatments leave at each position of one container, and whether neighbours are alike in it. */
export function residualPattern({
  pots,
}: PotsOfContainer): Required<Pick<PositionEffects, 'morans_i' | 'residuals'>> {
  const nothing = (reason: string) => ({ i: null, expected: null, variance: null, p: null, reason });
  if (pots.length < 3)
    return { morans_i: nothing(say('Fewer than three pots have a known weight.')), residuals: [] };
  const values = groupIndexes(pots.map(({ position }) => treatmentKey(position.treatment)));
  const factor = { name: 'treatment', levels: groupCount(values), values };
  const model = modelTerms(pots.length, [factor], factor.levels > 1 ? [['treatment']] : []);
  const weights = pots.map(({ value }) => value);
  const { residuals } = leastSquares(model.matrix, weights);
  const neighbours = rookNeighbours(pots.map(({ position }) => position));
  const found = moransI(weights, model.matrix, neighbours);
  const exact =
    found.i === null || pots.length > exactUpTo ? null : moransIExactTail(weights, model.matrix, neighbours);
  return {
    morans_i:
      found.i === null
        ? nothing(say('No test: {reason}.', { reason: say(found.reason) }))
        : {
            i: found.i,
            expected: found.expected,
            variance: found.variance,
            p: found.p,
            ...(found.p === null ? { reason: noRoom() } : {}),
            ...(exact === null ? {} : { exact_p: exact, exact: true }),
          },
    residuals: pots.map(({ position: { row, column } }, index) => ({
      row,
      column,
      residual: residuals[index]!,
    })),
  };
}

const noRoom = (): string =>
  say('No test: as treatments stand here, the likeness of neighbours is the same whatever the weights.');
