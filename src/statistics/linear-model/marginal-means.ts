import { type FixedEffects, isEstimable, lacksError, NO_DEGREES_OF_FREEDOM } from './fixed-effects.ts';
import { dotProduct, entryOf, type Matrix, sandwich } from './matrix.ts';
import { isContained, type ModelTerms, termWeights } from './model-terms.ts';
import { satterthwaiteFrom } from './satterthwaite.ts';

/** An adjusted mean; `estimate`, `se` and `df` are null where they cannot be had, with the reason. */
export interface MarginalMean {
  /** The level of each factor of the term, in the term's order. */
  readonly levels: readonly number[];
  readonly estimate: number | null;
  readonly se: number | null;
  readonly df: number | null;
  readonly reason: string | null;
}

/** The difference between two adjusted means, the first less the second. */
export interface MarginalDifference {
  /** Indexes of the means. */
  readonly a: number;
  readonly b: number;
  readonly estimate: number | null;
  readonly se: number | null;
  readonly df: number | null;
  readonly reason: string | null;
}

export interface MarginalMeans {
  readonly factors: readonly string[];
  readonly means: readonly MarginalMean[];
  /** Every pair of means, in order. */
  readonly differences: readonly MarginalDifference[];
  /** Covariances of the means; zero for those that cannot be estimated. */
  readonly covariance: Matrix;
}

export interface MarginalMeansOptions {
  /** Error degrees of freedom of the stratum of the term's unit: none of a mean or difference exceeds it; with none, no standard errors. */
  readonly greatestDf?: number;
}

/**
 * Adjusted (marginal) means of the combinations of some factors: the model's prediction for each,
 * averaged with equal weights over the levels of all other factors, blocks among them, and at the mean of
 * covariates. Blocks are fixed, so the standard error of a mean leaves out the variance between blocks.
 * Units are those of the response.
 *
 * Reference: Searle, Speed & Milliken (1980) The American Statistician 34, 216-221.
 */
export function marginalMeans(
  effects: FixedEffects,
  model: ModelTerms,
  factors: readonly string[],
  options: MarginalMeansOptions = {},
): MarginalMeans {
  const combinations = combinationsOf(model, factors);
  const contrasts = combinations.map((levels) => meanWeights(effects, model, factors, levels));
  const covariance = sandwich(contrasts, effects.covariance);
  const derivatives = effects.derivatives.map((derivative) => sandwich(contrasts, derivative));
  const spread = (weights: readonly (readonly [number, number])[]) => {
    const form = (matrix: Matrix) => signedForm(matrix, weights);
    const variance = form(covariance);
    const df = satterthwaiteFrom(effects, variance, Float64Array.from(derivatives, form), options.greatestDf);
    return { se: Math.sqrt(Math.max(variance, 0)), df };
  };
  const describe = (contrast: Float64Array, weights: readonly (readonly [number, number])[]) => {
    if (!isEstimable(effects, contrast)) {
      return { estimate: null, se: null, df: null, reason: 'not estimable: combinations are missing' };
    }
    const estimate = dotProduct(contrast, effects.coefficients);
    const none = options.greatestDf !== undefined && !(options.greatestDf > 0);
    const lacking = none ? NO_DEGREES_OF_FREEDOM : lacksError(effects, contrast);
    if (lacking !== null) return { estimate, se: null, df: null, reason: lacking };
    const { se, df } = spread(weights);
    if (df === null) return { estimate, se: null, df: null, reason: 'no error variance could be estimated' };
    return { estimate, se, df, reason: null };
  };
  const differences: MarginalDifference[] = [];
  contrasts.forEach((first, a) => {
    for (let b = a + 1; b < contrasts.length; b++) {
      const second = contrasts[b]!;
      const contrast = first.map((weight, k) => weight - second[k]!);
      differences.push({
        a,
        b,
        ...describe(contrast, [
          [a, 1],
          [b, -1],
        ]),
      });
    }
  });
  return {
    factors,
    means: combinations.map((levels, k) => ({ levels, ...describe(contrasts[k]!, [[k, 1]]) })),
    differences,
    covariance,
  };
}

/** The weights of an adjusted mean in the model's coefficients. */
export function meanWeights(
  effects: FixedEffects,
  model: ModelTerms,
  factors: readonly string[],
  levels: readonly number[],
): Float64Array {
  const weights = new Float64Array(effects.coefficients.length);
  weights[0] = 1;
  for (const term of model.terms) {
    if (!isContained(term.factors, factors)) continue;
    weights.set(
      termWeights(model, term, (name) => levels[factors.indexOf(name)]!),
      term.start,
    );
  }
  return weights;
}

function combinationsOf(model: ModelTerms, factors: readonly string[]): number[][] {
  let combinations: number[][] = [[]];
  for (const name of factors) {
    const factor = model.factors.find((candidate) => candidate.name === name);
    if (!factor) throw new Error(`marginalMeans: ${name} is no factor of the model`);
    combinations = combinations.flatMap((levels) =>
      Array.from({ length: factor.levels }, (_, level) => [...levels, level]),
    );
  }
  return combinations;
}

function signedForm(matrix: Matrix, weights: readonly (readonly [number, number])[]): number {
  let sum = 0;
  for (const [i, left] of weights) {
    for (const [j, right] of weights) sum += left * right * entryOf(matrix, i, j);
  }
  return sum;
}
