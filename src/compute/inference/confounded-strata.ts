import { distinctUnits } from '../../statistics/linear-model/distinct-units.ts';
import { householderQr } from '../../statistics/linear-model/householder-qr.ts';
import { columnOf, matrixFromColumns } from '../../statistics/linear-model/matrix.ts';
import { modelTerms } from '../../statistics/linear-model/model-terms.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import { groupCount } from './grouping.ts';

/**
 * The strata whose units coincide with treatments (one tank for each strength): blocks alone do not take them
 * up, blocks and treatments together do. Their error cannot be estimated, and enters every mean.
 */
export function confoundedStrata(design: AnalysisDesign): AnalysisDesign['errors']['strata'] {
  const treatments = design.terms.map(({ factors }) => factors);
  return design.errors.strata.filter(
    ({ groups }) =>
      !takenUp(design, design.blocks, groups) && takenUp(design, [...design.blocks, ...treatments], groups),
  );
}

function takenUp(
  design: AnalysisDesign,
  terms: readonly (readonly string[])[],
  groups: readonly number[],
): boolean {
  const { first } = distinctUnits(new Float64Array(groups.length), [
    ...design.factors.map(({ values }) => values),
    groups,
  ]);
  const factors = design.factors.map((factor) => ({
    ...factor,
    values: first.map((index) => factor.values[index]!),
  }));
  const { matrix } = modelTerms(first.length, factors, terms);
  const fixed = Array.from({ length: matrix.columns }, (_, column) => columnOf(matrix, column));
  const own = Array.from({ length: groupCount(groups) }, (_, group) =>
    Float64Array.from(first, (index) => (groups[index] === group ? 1 : 0)),
  );
  const rank = (columns: readonly Float64Array[]) =>
    householderQr(matrixFromColumns(first.length, columns)).independent.length;
  return rank([...fixed, ...own]) === rank(fixed);
}
