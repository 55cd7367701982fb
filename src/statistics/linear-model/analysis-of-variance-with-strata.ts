import { meanOf } from '../mean.ts';
import { type DistinctUnits, distinctUnits } from './distinct-units.ts';
import type { FixedEffects } from './fixed-effects.ts';
import { scaleRows } from './least-squares.ts';
import { columnOf, type Matrix } from './matrix.ts';
import { type Factor, type ModelTerm, type ModelTerms, modelTerms } from './model-terms.ts';
import { roundingNoise } from './rounding-noise.ts';
import { strataEffects } from './strata-effects.ts';
import { type Stratum, strataRotation } from './strata-rotation.ts';
import { notEstimableRow, type StrataRow, stratumRows, testedRow } from './strata-rows.ts';
import { ABSENT, analyseStratum, lengthOf, type StratumAnalysis } from './stratum-analysis.ts';
import {
  type VarianceComponent,
  varianceComponentsByMeanSquares,
} from './variance-components-by-mean-squares.ts';

export interface StrataDesign {
  readonly responses: readonly number[];
  readonly factors: readonly Factor[];
  /** Fixed terms fitted first: blocks, or the rows and columns of a Latin square. */
  readonly blocks: readonly (readonly string[])[];
  /** Treatment terms, in the order in which they are fitted. */
  readonly treatments: readonly (readonly string[])[];
  /** Nested groupings with random error, coarsest first; each group lies in one group of the one before. */
  readonly strata: readonly Stratum[];
  /** Name of the finest stratum, that of the observations themselves. */
  readonly residual: string;
}

export interface StrataAnalysis {
  /** Blocks, then each stratum's terms and residual, then terms that could not be estimated. */
  readonly rows: readonly StrataRow[];
  readonly varianceComponents: readonly VarianceComponent[];
  /**
   * Whether each term is estimated in one stratum only, terms are orthogonal, and the groups of each
   * stratum are of one size; only then are the tests exact and the components unbiased.
   */
  readonly balanced: boolean;
  /** The model (one row for each distinct unit) and its coefficients, for adjusted means; null unless balanced. */
  readonly effects: { readonly model: ModelTerms; readonly fixed: FixedEffects } | null;
}

/**
 * Analysis of variance with error strata: the observations' space is split into blocks (fixed, fitted
 * first) and strata, coarsest first, by projection; each treatment term is estimated in the stratum in
 * which it varies and tested against what is left there. Sums of squares are on the observations' scale.
 * A term that blocks take up entirely keeps a row without f and p; F is withheld where the error is
 * rounding noise.
 *
 * References: Nelder (1965) Proceedings of the Royal Society A 283, 147-178; Bailey (2008) Design of
 * Comparative Experiments, chapters 8 and 10.
 */
export function analysisOfVarianceWithStrata(design: StrataDesign): StrataAnalysis {
  const { responses, strata } = design;
  const centre = meanOf(responses);
  const lists = [...design.factors.map(({ values }) => values), ...strata.map(({ groups }) => groups)];
  const units = distinctUnits(
    Float64Array.from(responses, (value) => value - centre),
    lists,
  );
  const atUnits = (values: readonly number[]) => units.first.map((i) => values[i]!);
  const unitStrata = strata.map(({ name, groups }) => ({ name, groups: atUnits(groups) }));
  const model = modelTerms(
    units.first.length,
    design.factors.map((factor) => ({ ...factor, values: atUnits(factor.values) })),
    [...design.blocks, ...design.treatments],
  );
  const blocks = model.terms.slice(0, design.blocks.length);
  const treatments = model.terms.slice(design.blocks.length);
  const baseColumns = treatments[0]?.start ?? model.matrix.columns;

  const rootSizes = Float64Array.from(units.sizes, Math.sqrt);
  const scaled = scaleRows(model.matrix, rootSizes);
  const scaledMeans = units.means.map((mean, i) => mean * rootSizes[i]!);
  const rotation = strataRotation(firstColumns(scaled, baseColumns), unitStrata, design.residual, rootSizes);
  const columns = Array.from({ length: scaled.columns }, (_, j) => rotation.rotate(columnOf(scaled, j)));
  const rotated = rotation.rotate(scaledMeans);
  const analyses = rotation.strata
    .map((rows, s) =>
      analyseStratum(rows, treatments, columns, rotated, withinUnits(units, s === strata.length)),
    )
    .filter(({ dimension }) => dimension > 0);

  const noise = roundingNoise(responses);
  const found = new Set(analyses.flatMap(({ terms }) => terms.map(({ term }) => term)));
  const balanced =
    analyses.every(({ orthogonal }) => orthogonal) &&
    treatments.every((term) => inOnePlace(term, columns, rotation.baseRank, analyses)) &&
    unitStrata.every(({ groups }) => areOfOneSize(groups, units.sizes));
  return {
    rows: [
      ...blockRows(blocks, columns, rotated, rotation.baseRank, analyses[0] ?? null, noise),
      ...analyses.flatMap((analysis) => stratumRows(analysis, noise)),
      ...treatments.filter(({ name }) => !found.has(name)).map(notEstimableRow),
    ],
    varianceComponents: componentsOf(analyses, strata, responses.length),
    balanced,
    effects: balanced
      ? {
          model,
          fixed: strataEffects({ model, baseColumns, scaled, scaledMeans, centre, analyses, noise }),
        }
      : null,
  };
}

function firstColumns(matrix: Matrix, columns: number): Matrix {
  return { rows: matrix.rows, columns, values: matrix.values.subarray(0, columns * matrix.rows) };
}

function withinUnits(units: DistinctUnits, finest: boolean) {
  return finest ? units : { withinDf: 0, withinSumOfSquares: 0 };
}

/** Blocks in their order, each after those before it, against the coarsest stratum's error. */
function blockRows(
  blocks: readonly ModelTerm[],
  columns: readonly Float64Array[],
  rotated: Float64Array,
  baseRank: number,
  coarsest: StratumAnalysis | null,
  noise: number,
): StrataRow[] {
  let row = 1;
  return blocks.map((term) => {
    let df = 0;
    let sumOfSquares = 0;
    for (let j = term.start; j < term.start + term.count && row < baseRank; j++) {
      const column = columns[j]!;
      if (Math.abs(column[row]!) <= ABSENT * lengthOf(column)) continue;
      sumOfSquares += rotated[row]! ** 2;
      df += 1;
      row += 1;
    }
    return df === 0 ? notEstimableRow(term) : testedRow(term.name, null, df, sumOfSquares, coarsest, noise);
  });
}

/** Whether a term lies wholly in one stratum, or wholly among the blocks. */
function inOnePlace(
  term: ModelTerm,
  columns: readonly Float64Array[],
  baseRank: number,
  analyses: readonly StratumAnalysis[],
): boolean {
  const holding = analyses.filter(({ terms }) => terms.some((found) => found.term === term.name));
  if (holding.length === 0) return true;
  if (holding.length > 1) return false;
  return columns
    .slice(term.start, term.start + term.count)
    .every((column) => lengthOf(column.subarray(0, baseRank)) <= ABSENT * lengthOf(column));
}

function areOfOneSize(groups: readonly number[], sizes: readonly number[]): boolean {
  const totals = new Map<number, number>();
  groups.forEach((group, i) => totals.set(group, (totals.get(group) ?? 0) + sizes[i]!));
  return new Set(totals.values()).size <= 1;
}

function componentsOf(
  analyses: readonly StratumAnalysis[],
  strata: readonly Stratum[],
  observations: number,
): VarianceComponent[] {
  return varianceComponentsByMeanSquares(
    analyses.map(({ name, errorDf, errorSumOfSquares }) => {
      const groups = strata.find((stratum) => stratum.name === name)?.groups;
      return {
        stratum: name,
        df: errorDf,
        meanSquare: errorDf > 0 ? errorSumOfSquares / errorDf : null,
        observationsPerGroup: groups ? observations / new Set(groups).size : 1,
      };
    }),
  );
}
