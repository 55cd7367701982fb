import { householderQr } from '../../statistics/linear-model/householder-qr.ts';
import { type LeastSquares, leastSquares } from '../../statistics/linear-model/least-squares.ts';
import { columnOf, matrixFromColumns } from '../../statistics/linear-model/matrix.ts';
import { modelTerms } from '../../statistics/linear-model/model-terms.ts';
import { meanOf } from '../../statistics/mean.ts';
import { sum } from '../../statistics/sum.ts';
import type { Position, Treatment } from '../../model/trial.ts';
import { unitOf, type UnitStratum } from '../experimental-unit.ts';
import { treatmentKey } from '../treatments.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import { groupCount, groupIndexes } from './grouping.ts';

export interface UnitMean {
  name: string;
  container: string;
  block: string | null;
  /** The treatment combination, by its key. */
  treatment: string;
  levels: Treatment;
  /** The finest coarser unit that holds it, or nothing where there is none. */
  coarser: string;
  mean: number;
  total: number;
  /** Index of its first observation. */
  first: number;
  /** How many weights are behind the mean. */
  weights: number;
}

/** The units of the finest factor, each with the mean of its weights. */
export interface UnitMeans {
  units: readonly UnitMean[];
  /** Least squares of the means on blocks, coarser units and treatments: what is left is the tested stratum's. */
  fit: LeastSquares;
}

/**
 * Means of the experimental units of the finest factor, and what blocks, coarser strata and treatments
 * leave of them. Units count alike, however many weights are behind each.
 */
export function unitMeans(design: AnalysisDesign): UnitMeans {
  const { observations, finest } = design;
  const groups = groupIndexes(observations.map(({ position }) => unitOf(position, finest)));
  const members = Array.from({ length: groupCount(groups) }, (): number[] => []);
  groups.forEach((group, index) => members[group]!.push(index));
  const first = members.map((indexes) => indexes[0]!);
  const means = members.map((indexes) => meanOf(indexes.map((index) => observations[index]!.value)));
  const factors = design.factors.map((factor) => ({
    ...factor,
    values: first.map((index) => factor.values[index]!),
  }));
  const terms = [...design.blocks, ...design.terms.map((term) => term.factors)];
  const model = modelTerms(first.length, factors, terms);
  const columns = Array.from({ length: model.matrix.columns }, (_, column) => columnOf(model.matrix, column));
  for (const { groups: coarse } of design.errors.strata) {
    const atUnits = groupIndexes(first.map((index) => String(coarse[index])));
    if (groupCount(atUnits) === first.length) continue;
    for (let group = 0; group < groupCount(atUnits); group += 1) {
      columns.push(Float64Array.from(atUnits, (each) => (each === group ? 1 : 0)));
    }
  }
  const matrix = matrixFromColumns(first.length, columns);
  const { independent } = householderQr(matrix);
  const kept = matrixFromColumns(
    first.length,
    independent.map((column) => columnOf(matrix, column)),
  );
  return {
    units: first.map((index, unit) => {
      const { position } = observations[index]!;
      return {
        name: unitOf(position, finest),
        container: position.container,
        block: position.block,
        treatment: treatmentKey(position.treatment),
        levels: position.treatment,
        coarser: coarserOf(design, position),
        mean: means[unit]!,
        total: sum(members[unit]!.map((each) => observations[each]!.value)),
        first: index,
        weights: members[unit]!.length,
      };
    }),
    fit: leastSquares(kept, means),
  };
}

/** The unit that something coarser than the finest factor was allotted to. */
function coarserOf(design: AnalysisDesign, position: Position): string {
  const units = design.terms.filter(({ unit }) => unit !== design.finest).map(({ unit }) => unit);
  const unit: UnitStratum | undefined = units.includes('plot') ? 'plot' : units[0];
  return unit === undefined ? '' : unitOf(position, unit);
}
