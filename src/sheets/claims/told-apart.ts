import type { Measure } from '../../compute/tables/measures.ts';
import type { Findings, Inference } from '../../model/findings.ts';
import type { Treatment } from '../../model/trial.ts';
import { inferenceOf } from '../asked-measure.ts';
import { differenceBetween } from '../difference-between.ts';

/** What a trial says of two treatments: which gave more, or that it cannot tell. */
export interface Judged {
  a: Treatment;
  b: Treatment;
  measure: Measure;
  /** a - b on average; null where it is not known. */
  estimate: number | null;
  /** `more` where a gave more than b, told apart from zero. */
  verdict: 'more' | 'less' | 'not told apart' | 'not tested';
}

/** Judges a pair by its own difference, in the measure and cut that are spoken of. */
export function judgePair(
  findings: Findings,
  measure: Measure,
  cut: number | 'all',
  a: Treatment,
  b: Treatment,
): Judged {
  const inference: Inference | null = inferenceOf(findings, measure, cut);
  const descriptions =
    cut === 'all'
      ? findings.treatments
      : (findings.treatments_by_cut.find((each) => each.cut === cut)?.treatments ?? findings.treatments);
  const { estimate, tested } = differenceBetween(descriptions, measure, inference, a, b);
  if (
    estimate === null ||
    inference?.verdict !== 'tested' ||
    (tested === null && inference.differences.length === 0)
  )
    return { a, b, measure, estimate, verdict: 'not tested' };
  if (tested === null || tested.lower * tested.upper <= 0)
    return { a, b, measure, estimate, verdict: 'not told apart' };
  return { a, b, measure, estimate, verdict: tested.lower > 0 ? 'more' : 'less' };
}
