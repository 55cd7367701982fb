import { distinctUnits } from '../../statistics/linear-model/distinct-units.ts';
import { householderQr } from '../../statistics/linear-model/householder-qr.ts';
import { columnOf, matrixFromColumns } from '../../statistics/linear-model/matrix.ts';
import { modelTerms } from '../../statistics/linear-model/model-terms.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import { groupCount } from './grouping.ts';

/**
 * The error degrees of freedom of each stratum, by its name: the dimensions that its groups add once blocks,
 * coarser strata and the terms that were allotted to it or to something coarser are fitted. They bound the
 * degrees of freedom of every test of what was allotted to that stratum, whether the design is balanced or not.
 */
export function errorDegrees(design: AnalysisDesign): Map<string, number> {
  const { strata, residual } = design.errors;
  const names = [...strata.map(({ name }) => name), residual];
  // Observations alike in all that the model knows add nothing to a rank: one of each is enough.
  const lists = [...design.factors.map(({ values }) => values), ...strata.map(({ groups }) => groups)];
  const { first } = distinctUnits(new Float64Array(design.observations.length), lists);
  const atFirst = (values: readonly number[]) => first.map((index) => values[index]!);
  const factors = design.factors.map((factor) => ({ ...factor, values: atFirst(factor.values) }));
  const degrees = new Map<string, number>();
  const coarser: Float64Array[] = [];
  for (const [index, name] of names.entries()) {
    const allotted = design.terms.filter(({ unit }) => names.indexOf(stratumOf(design, unit)) <= index);
    const model = modelTerms(first.length, factors, [
      ...design.blocks,
      ...allotted.map((term) => term.factors),
    ]);
    const fixed = Array.from({ length: model.matrix.columns }, (_, column) => columnOf(model.matrix, column));
    const before = [...fixed, ...coarser];
    const own = strata[index] ? indicators(atFirst(strata[index].groups)) : [];
    const { independent } = householderQr(matrixFromColumns(first.length, [...before, ...own]));
    const whole = name === residual ? design.observations.length : independent.length;
    degrees.set(name, whole - independent.filter((column) => column < before.length).length);
    coarser.push(...own);
  }
  return degrees;
}

/** The name of the stratum in which units of a kind are compared. */
export function stratumOf(design: AnalysisDesign, unit: AnalysisDesign['finest']): string {
  return design.errors.nameOf.get(unit) ?? design.errors.residual;
}

function indicators(groups: readonly number[]): Float64Array[] {
  const columns = Array.from({ length: groupCount(groups) }, () => new Float64Array(groups.length));
  groups.forEach((group, row) => {
    columns[group]![row] = 1;
  });
  return columns;
}
