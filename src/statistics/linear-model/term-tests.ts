import {
  type FixedEffects,
  isEstimable,
  lacksError,
  NO_DEGREES_OF_FREEDOM,
  NO_VARIATION,
} from './fixed-effects.ts';
import { fTestOfContrasts } from './f-test-of-contrasts.ts';
import { matrixFromColumns } from './matrix.ts';
import { isContained, type ModelTerm, type ModelTerms } from './model-terms.ts';
import { householderQr, rotateBack } from './householder-qr.ts';

/** The test of one fixed term after all others (Type III). */
export interface TermTest {
  readonly term: string;
  /** Degrees of freedom that could be estimated: 0 where none could. */
  readonly df: number;
  readonly errorDf: number | null;
  readonly f: number | null;
  readonly p: number | null;
  /** Why there is no test, or what the test leaves out. */
  readonly reason: string | null;
}

/**
 * Type III tests of the terms of a model: each asks whether the term's coefficients are all zero, the
 * contrasts being orthonormal and summing to zero, so that a main effect compares means over the levels of
 * the other factors with equal weights. A term whose contrasts cannot all be estimated is not tested
 * where another term contains it; where none does, its estimable part is tested, and `reason` says so.
 * `greatestDf` gives, by term, the error degrees of freedom of the term's own unit's stratum;
 * with none, there is no test.
 *
 * Reference: Searle (1987) Linear Models for Unbalanced Data, chapters 4 and 9.
 */
export function termTests(
  effects: FixedEffects,
  model: ModelTerms,
  greatestDf: Readonly<Record<string, number>> = {},
): TermTest[] {
  return model.terms.map((term) => testOf(effects, model, term, greatestDf[term.name]));
}

function testOf(effects: FixedEffects, model: ModelTerms, term: ModelTerm, greatest = Infinity): TermTest {
  const none = { term: term.name, errorDf: null, f: null, p: null };
  if (term.count === 0) return { ...none, df: 0, reason: 'has a single level' };
  const contrasts = testableContrasts(effects, term);
  const whole = contrasts.length === term.count;
  const containing = model.terms.find((other) => other !== term && isContained(term.factors, other.factors));
  if (!whole && containing) {
    return {
      ...none,
      df: contrasts.length,
      reason: `cannot be estimated beside ${containing.name}: combinations are missing`,
    };
  }
  if (contrasts.length === 0) {
    return { ...none, df: 0, reason: 'cannot be told apart from the terms before it' };
  }
  if (!(greatest > 0)) return { ...none, df: contrasts.length, reason: NO_DEGREES_OF_FREEDOM };
  const lacking = contrasts
    .map((contrast) => lacksError(effects, contrast))
    .find((reason) => reason !== null);
  if (lacking !== undefined) return { ...none, df: contrasts.length, reason: lacking };
  const test = fTestOfContrasts(effects, contrasts, greatest);
  if (test === null) return { ...none, df: contrasts.length, reason: NO_VARIATION };
  const reason =
    test.errorDf === null
      ? 'the sampling error of the variance components cannot be estimated'
      : whole
        ? null
        : `tested on ${contrasts.length} of ${term.count} degrees of freedom: combinations are missing`;
  return { term: term.name, ...test, f: test.errorDf === null ? null : test.f, reason };
}

/** An orthonormal set of the contrasts within one term's coefficients that can be estimated. */
export function testableContrasts(effects: FixedEffects, term: ModelTerm): Float64Array[] {
  const units = Array.from({ length: term.count }, (_, k) => {
    const contrast = new Float64Array(effects.coefficients.length);
    contrast[term.start + k] = 1;
    return contrast;
  });
  if (units.every((contrast) => isEstimable(effects, contrast))) return units;
  const blocked = effects.dependencies.map((combination) =>
    combination
      .slice(term.start, term.start + term.count)
      .map((value) => (Math.abs(value) < 1e-9 ? 0 : value)),
  );
  const qr = householderQr(matrixFromColumns(term.count, blocked));
  const rank = qr.independent.length;
  return Array.from({ length: term.count - rank }, (_, k) => {
    const unit = new Float64Array(term.count);
    unit[rank + k] = 1;
    const contrast = new Float64Array(effects.coefficients.length);
    contrast.set(rotateBack(qr, unit), term.start);
    return contrast;
  });
}
