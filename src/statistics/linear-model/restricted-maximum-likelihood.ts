import { meanOf } from '../mean.ts';
import { constrainedNewton, type Minimum } from './constrained-newton.ts';
import { type DistinctUnits, distinctUnits } from './distinct-units.ts';
import type { Spread } from './covariance-structure.ts';
import { type FixedEffects, NO_DEGREES_OF_FREEDOM, NO_VARIATION } from './fixed-effects.ts';
import { householderQr, type QrFactors, rotate, rotateBack } from './householder-qr.ts';
import { scaleRows } from './least-squares.ts';
import { columnOf, dotProduct, matrixFromColumns, zeroMatrix } from './matrix.ts';
import { mixedModelEffects } from './mixed-model-effects.ts';
import { type Covariate, type Factor, type ModelTerms, modelTerms } from './model-terms.ts';
import {
  type RestrictedDeviance,
  restrictedDeviance,
  shareLeft,
  type UnitModel,
} from './restricted-likelihood.ts';
import { roundingNoise } from './rounding-noise.ts';
import type { Stratum } from './strata-rotation.ts';
import { varianceCovariance } from './variance-covariance.ts';

export interface MixedDesign {
  readonly responses: readonly number[];
  readonly factors: readonly Factor[];
  readonly covariates?: readonly Covariate[];
  /** Fixed terms, blocks among them. */
  readonly fixed: readonly (readonly string[])[];
  /** Random terms: the group of each observation. Nested or crossed. */
  readonly random: readonly Stratum[];
  /** Name of the residual, that of the observations themselves. */
  readonly residual: string;
}

export interface RemlComponent {
  readonly term: string;
  readonly variance: number;
  /** True where the likelihood would have it below zero. */
  readonly atZero: boolean;
}

export interface RemlFit {
  /** The random terms in their order, the residual last. */
  readonly components: readonly RemlComponent[];
  /**
   * The restricted log-likelihood of the responses' contrasts free of the fixed terms, which does not
   * depend on how the fixed terms are written. Programs that leave in log|X'X| / 2 of their own model
   * matrix print this less that number.
   */
  readonly logLikelihood: number;
  readonly model: ModelTerms;
  readonly effects: FixedEffects;
  readonly iterations: number;
}

export type Reml = RemlFit | { readonly reason: string };

/**
 * Restricted maximum likelihood for y = X b + sum Z_k u_k + e with variances that may not be negative,
 * for designs that are not balanced. The optimum is found by Newton's method on the variances, to about
 * 1e-9 of their size; a variance at zero is reported so. `effects` carries the observed information at the
 * optimum, variances at zero left out, for Satterthwaite's degrees of freedom. Where no variances can be
 * estimated, the reason.
 *
 * Reference: Patterson & Thompson (1971) Biometrika 58, 545-554; Searle, Casella & McCulloch (1992)
 * Variance Components, chapters 6 and 8.
 */
export function restrictedMaximumLikelihood(design: MixedDesign): Reml {
  const { responses, random } = design;
  const covariates = design.covariates ?? [];
  const centre = meanOf(responses);
  const lists = [...design.factors, ...covariates].map(({ values }) => values);
  const units = distinctUnits(
    Float64Array.from(responses, (value) => value - centre),
    [...lists, ...random.map(({ groups }) => groups)],
  );
  const model = modelAtUnits(design, units);
  const rootSizes = Float64Array.from(units.sizes, Math.sqrt);
  const x = scaleRows(model.matrix, rootSizes);
  const means = units.means.map((mean, i) => mean * rootSizes[i]!);
  const fixed = householderQr(x);
  const rotated = rotate(fixed, means);
  const rank = fixed.independent.length;
  const unitSpace: UnitModel = {
    x: matrixFromColumns(
      x.rows,
      fixed.independent.map((j) => columnOf(x, j)),
    ),
    residuals: rotateBack(fixed, rotated.fill(0, 0, rank)),
    spreads: [{ diagonal: new Float64Array(x.rows).fill(1) }, ...random.map((term) => spreadOf(term, units))],
    withinDf: units.withinDf,
    withinSumOfSquares: units.withinSumOfSquares,
  };
  const degrees = responses.length - rank;
  const total = dotProduct(unitSpace.residuals, unitSpace.residuals) + units.withinSumOfSquares;
  if (degrees === 0) return { reason: NO_DEGREES_OF_FREEDOM };
  if (total <= roundingNoise(responses)) return { reason: NO_VARIATION };
  const hidden = random.find((_, k) => shareLeft(unitSpace, k + 1) < 1e-10);
  if (hidden) return { reason: `${hidden.name} cannot be told apart from the fixed terms` };

  const minimum = bestMinimum(unitSpace, total / degrees);
  if (minimum === null)
    return { reason: 'the variances cannot be told apart, or one of them has no variation' };
  const { at: variances, evaluation } = minimum;
  if (variances[0]! * degrees <= 1e-9 * total) return { reason: 'nothing varies within the finest units' };
  const effects = mixedModelEffects({
    x,
    fixed,
    responses: means,
    centre,
    spreads: unitSpace.spreads,
    variances,
    varianceCovariance: varianceCovariance(variances, evaluation.observed),
  });
  if (effects === null) return { reason: 'the fixed terms cannot be estimated at these variances' };
  const names = [...random.map(({ name }) => name), design.residual];
  const ordered = [...variances.subarray(1), variances[0]!];
  return {
    components: ordered.map((variance, k) => ({ term: names[k]!, variance, atZero: variance === 0 })),
    logLikelihood: -0.5 * (evaluation.deviance - logCrossProduct(fixed) + degrees * Math.log(2 * Math.PI)),
    model,
    effects,
    iterations: minimum.iterations,
  };
}

function modelAtUnits(design: MixedDesign, units: DistinctUnits): ModelTerms {
  const atUnits = (values: readonly number[]) => units.first.map((i) => values[i]!);
  return modelTerms(
    units.first.length,
    design.factors.map((factor) => ({ ...factor, values: atUnits(factor.values) })),
    design.fixed,
    (design.covariates ?? []).map(({ name, values, centre }) => ({
      name,
      values: atUnits(values),
      centre: centre ?? meanOf(values),
    })),
  );
}

function spreadOf({ groups }: Stratum, units: DistinctUnits): Spread {
  const indexes = new Map<number, number>();
  const columns = units.first.map((i) => {
    const group = groups[i]!;
    const index = indexes.get(group) ?? indexes.size;
    indexes.set(group, index);
    return index;
  });
  if (indexes.size === columns.length) return { diagonal: Float64Array.from(units.sizes) };
  const indicators = zeroMatrix(columns.length, indexes.size);
  columns.forEach((column, i) => {
    indicators.values[column * columns.length + i] = Math.sqrt(units.sizes[i]!);
  });
  return { indicators };
}

/** log|X' X| over the independent columns. */
function logCrossProduct(fixed: QrFactors): number {
  return 2 * fixed.triangle.reduce((sum, column) => sum + Math.log(Math.abs(column.at(-1)!)), 0);
}

/** The likelihood may have more than one peak: it is climbed from even shares and from small ones. */
function bestMinimum(model: UnitModel, meanSquare: number): Minimum<RestrictedDeviance> | null {
  const count = model.spreads.length;
  const starts = [
    Float64Array.from({ length: count }, () => meanSquare / count),
    Float64Array.from({ length: count }, (_, k) => meanSquare * (k === 0 ? 1 : 0.01)),
  ];
  const found = starts
    .map((start) => constrainedNewton((variances) => restrictedDeviance(model, variances), start))
    .filter((minimum) => minimum !== null);
  return found.reduce<Minimum<RestrictedDeviance> | null>(
    (best, minimum) => (best && best.evaluation.deviance <= minimum.evaluation.deviance ? best : minimum),
    null,
  );
}
