import type { Inference } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import type { Yields } from '../yields.ts';
import { analyseByStrata } from './analyse-by-strata.ts';
import { type AnalysisDesign, analysisDesign } from './analysis-design.ts';
import { errorDegrees } from './error-degrees.ts';
import { observationsOf } from './observations.ts';

/** Which of the three ways an analysis goes: strata where balanced, else least squares or REML by the number of errors. */
export type AnalysisKind = 'strata' | 'least squares' | 'likelihood';

/** How one tested entry of the findings is analysed, for whoever wants to repeat it elsewhere. */
export interface AnalysisPlan {
  kind: AnalysisKind;
  design: AnalysisDesign;
  /** The error degrees of freedom of each stratum, by its name. */
  degrees: ReadonlyMap<string, number>;
}

/** Reads off the layout how an entry that is tested is analysed, as the inference itself does. */
export function analysisPlan(trial: Trial, entry: Inference, yields: Yields): AnalysisPlan {
  const design = analysisDesign(trial, observationsOf(yields, entry.measure));
  const degrees = errorDegrees(design);
  const { balanced } = analyseByStrata(design);
  const several = design.errors.strata.some(({ name }) => degrees.get(name)! > 0);
  return { kind: balanced ? 'strata' : several ? 'likelihood' : 'least squares', design, degrees };
}
