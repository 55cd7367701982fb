import { fUpperTail } from '../distributions/fisher-f.ts';
import { NO_DEGREES_OF_FREEDOM, NO_VARIATION } from './fixed-effects.ts';
import type { ModelTerm } from './model-terms.ts';
import type { StratumAnalysis } from './stratum-analysis.ts';

/** A line of an analysis of variance with strata: a block, treatment or residual line. */
export interface StrataRow {
  /** Null in a residual line. */
  readonly term: string | null;
  /** Null for a block term, and for a term that no stratum holds. */
  readonly stratum: string | null;
  readonly df: number;
  readonly sumOfSquares: number | null;
  readonly meanSquare: number | null;
  /** Stratum of the error that the line is tested against, with that error's degrees of freedom. */
  readonly error: string | null;
  readonly errorDf: number | null;
  readonly f: number | null;
  readonly p: number | null;
  readonly reason: string | null;
}

/** Why a term has no line of numbers. */
export const ALIASED = 'cannot be told apart from blocks or from the terms before it';
export const SINGLE_LEVEL = 'has a single level';

/** The line of a term tested against a stratum's error; without one (null) it is not tested. */
export function testedRow(
  term: string,
  stratum: string | null,
  df: number,
  sumOfSquares: number,
  error: StratumAnalysis | null,
  noise: number,
): StrataRow {
  const meanSquare = sumOfSquares / df;
  const row = {
    term,
    stratum,
    df,
    sumOfSquares,
    meanSquare,
    error: error?.name ?? null,
    errorDf: error?.errorDf ?? null,
  };
  const untested = (reason: string) => ({ ...row, f: null, p: null, reason });
  if (error === null || error.errorDf === 0) return untested(NO_DEGREES_OF_FREEDOM);
  if (error.errorSumOfSquares <= noise) return untested(NO_VARIATION);
  const f = meanSquare / (error.errorSumOfSquares / error.errorDf);
  return { ...row, f, p: fUpperTail(f, df, error.errorDf), reason: null };
}

/** The lines of one stratum: its terms, each against its error, then the error itself. */
export function stratumRows(analysis: StratumAnalysis, noise: number): StrataRow[] {
  const lines = analysis.terms.map(({ term, df, sumOfSquares }) =>
    testedRow(term, analysis.name, df, sumOfSquares, analysis, noise),
  );
  if (analysis.errorDf === 0) return lines;
  const residual = {
    term: null,
    stratum: analysis.name,
    df: analysis.errorDf,
    sumOfSquares: analysis.errorSumOfSquares,
    meanSquare: analysis.errorSumOfSquares / analysis.errorDf,
    error: null,
    errorDf: null,
    f: null,
    p: null,
    reason: null,
  };
  return [...lines, residual];
}

/** The line of a term that cannot be estimated. */
export function notEstimableRow(term: ModelTerm): StrataRow {
  return {
    term: term.name,
    stratum: null,
    df: 0,
    sumOfSquares: null,
    meanSquare: null,
    error: null,
    errorDf: null,
    f: null,
    p: null,
    reason: term.count === 0 ? SINGLE_LEVEL : ALIASED,
  };
}
