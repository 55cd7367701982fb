import { dotProduct, type Matrix, quadraticForm } from './matrix.ts';

/**
 * Estimated coefficients of a model's fixed terms, and all that tests and adjusted means need of them:
 * what least squares, the analysis with strata and REML have in common.
 */
export interface FixedEffects {
  /** One for each column of the model's matrix; 0 for a column that depends on those before it. */
  readonly coefficients: Float64Array;
  /** Covariances of the coefficients; zero rows and columns for dependent columns. */
  readonly covariance: Matrix;
  /** For each dependent column the combination of columns that is zero at every observation. */
  readonly dependencies: readonly Float64Array[];
  /** The variances that the covariance rests on: its derivative by each ... */
  readonly derivatives: readonly Matrix[];
  /** ... and the sampling covariance of their estimates (null where it could not be had). */
  readonly varianceCovariance: Matrix | null;
  /** The shares of the covariance that no error can be found for, with the reason. */
  readonly withoutError: readonly { readonly share: Matrix; readonly reason: string }[];
}

/** Reasons why a test or a standard error is left out. */
export const NO_DEGREES_OF_FREEDOM = 'no degrees of freedom are left for error';
export const NO_VARIATION = 'the error is zero to rounding';

/** How far from zero a contrast may be on a dependency, beside its own size, and still be estimable. */
const ESTIMABLE = 1e-8;

/** Whether a linear function of the coefficients means the same whatever the dependent ones are set to. */
export function isEstimable(effects: FixedEffects, contrast: Float64Array): boolean {
  const size = Math.sqrt(dotProduct(contrast, contrast));
  return effects.dependencies.every(
    (combination) =>
      Math.abs(dotProduct(combination, contrast)) <=
      ESTIMABLE * size * Math.sqrt(dotProduct(combination, combination)),
  );
}

/** Why a contrast's variance cannot be estimated (no degrees of freedom, no variation), or null. */
export function lacksError(effects: FixedEffects, contrast: Float64Array): string | null {
  const negligible = 1e-12 * dotProduct(contrast, contrast);
  const lacking = effects.withoutError.find(
    ({ share }) => quadraticForm(contrast, share, contrast) > negligible,
  );
  return lacking?.reason ?? null;
}
