import type { Inference } from '../../model/findings.ts';
import { tTwoSided } from '../../statistics/distributions/student-t.ts';
import { leastSquares } from '../../statistics/linear-model/least-squares.ts';
import { modelTerms } from '../../statistics/linear-model/model-terms.ts';
import { meanOf } from '../../statistics/mean.ts';
import { positionKey } from '../position-key.ts';
import type { AnalysisDesign } from './analysis-design.ts';

type Unusual = NonNullable<Inference['checks']>['unusual'];

/**
 * Positions whose residual is too large to be one of so many: the externally studentised residual of the
 * position's mean about blocks and treatments, its p multiplied by the number of positions, below alpha.
 * Residuals are in the variable's unit.
 * Reference: R. D. Cook and S. Weisberg (1982), Residuals and Influence in Regression, section 2.2.2.
 */
export function unusualPositions(design: AnalysisDesign, alpha: number): Unusual {
  const byPosition = Map.groupBy(design.observations.keys(), (index) =>
    positionKey(design.observations[index]!.position),
  );
  const members = [...byPosition.values()];
  const first = members.map((indexes) => indexes[0]!);
  const means = members.map((indexes) => meanOf(indexes.map((index) => design.observations[index]!.value)));
  const factors = design.factors.map((factor) => ({
    ...factor,
    values: first.map((index) => factor.values[index]!),
  }));
  const model = modelTerms(first.length, factors, [
    ...design.blocks,
    ...design.terms.map((term) => term.factors),
  ]);
  const fit = leastSquares(model.matrix, means);
  const df = fit.residualDf - 1;
  if (df < 1 || fit.withoutError.length > 0) return [];
  return first.flatMap((index, at) => {
    const residual = fit.residuals[at]!;
    const free = 1 - fit.leverages[at]!;
    if (free <= 1e-9) return [];
    const rest = fit.residualSumOfSquares - (residual * residual) / free;
    const studentised = residual / Math.sqrt((Math.max(rest, 0) / df) * free);
    const p = Number.isFinite(studentised) ? tTwoSided(studentised, df) : 0;
    if (p * first.length >= alpha) return [];
    const { container, row, column } = design.observations[index]!.position;
    return [{ container, row, column, residual }];
  });
}
