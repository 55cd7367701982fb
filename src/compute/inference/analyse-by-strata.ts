import {
  analysisOfVarianceWithStrata,
  type StrataAnalysis,
} from '../../statistics/linear-model/analysis-of-variance-with-strata.ts';
import type { AnalysisDesign } from './analysis-design.ts';

/** The analysis of variance of a trial's design, with its error strata; it says whether the design is balanced. */
export function analyseByStrata(design: AnalysisDesign): StrataAnalysis {
  return analysisOfVarianceWithStrata({
    responses: design.observations.map(({ value }) => value),
    factors: design.factors,
    blocks: design.blocks,
    treatments: design.terms.map(({ factors }) => factors),
    strata: design.errors.strata,
    residual: design.errors.residual,
  });
}
