import type { Measure } from '../compute/tables/measures.ts';
import type { Inference, TreatmentDescription } from '../model/findings.ts';
import { say } from '../model/say.ts';
import type { Treatment } from '../model/trial.ts';
import { fits } from './asked-treatment.ts';

/** How two treatments of a trial differ. */
export interface DifferenceBetween {
  /** a - b; null where it is not known. */
  estimate: number | null;
  /** Why it is not known. */
  reason: string;
  /** Simultaneous limits and adjusted p; null where the trial tested nothing. */
  tested: { lower: number; upper: number; p: number; alpha: number } | null;
}

/**
 * The difference between two treatments as the trial's page tells it: Dunnett's comparison where one of the two
 * is the check, else Tukey and Kramer's; where nothing was tested, the difference of the plain means.
 */
export function differenceBetween(
  descriptions: readonly TreatmentDescription[],
  measure: Measure,
  inference: Inference | null,
  a: Treatment,
  b: Treatment,
): DifferenceBetween {
  if (inference?.verdict === 'tested') {
    const compared = withCheck(inference, a, b) ?? amongAll(inference, a, b);
    if (compared !== null) return compared;
    if (inference.differences.length > 0)
      return {
        estimate: null,
        reason: say('the trial does not compare these two with one another'),
        tested: null,
      };
  }
  const [first, second] = [meanOf(descriptions, measure, a), meanOf(descriptions, measure, b)];
  if (first === null || second === null)
    return { estimate: null, reason: say('one of the two has no mean of its own'), tested: null };
  return { estimate: first - second, reason: '', tested: null };
}

function same(a: Treatment, b: Treatment): boolean {
  return fits(a, b) && fits(b, a);
}

interface Compared {
  estimate: number | null;
  lower: number | null;
  upper: number | null;
  p_adjusted: number | null;
  reason?: string;
}

function known(
  { estimate, lower, upper, p_adjusted: p, reason }: Compared,
  sign: 1 | -1,
  alpha: number,
): DifferenceBetween {
  if (estimate === null)
    return { estimate, reason: reason ?? say('the analysis does not give it'), tested: null };
  if (lower === null || upper === null || p === null)
    return { estimate: sign * estimate, reason: '', tested: null };
  const [low, high] = sign === 1 ? [lower, upper] : [-upper, -lower];
  return { estimate: sign * estimate, reason: '', tested: { lower: low, upper: high, p, alpha } };
}

/** Comparisons with the check name the other treatment; which level the check is, the pairs of the family tell. */
function withCheck(inference: Inference, a: Treatment, b: Treatment): DifferenceBetween | null {
  const { against_check: compared, means, alpha } = inference;
  const of = (treatment: Treatment) => compared.find((entry) => same(entry.treatment, treatment)) ?? null;
  const isCheck = (treatment: Treatment): boolean => {
    const family = means.filter(
      (mean) => Object.keys(mean.treatment).join() === Object.keys(treatment).join(),
    );
    const rest = family.filter((mean) => of(mean.treatment) === null);
    return rest.length === 1 && same(rest[0]!.treatment, treatment);
  };
  const [ofA, ofB] = [of(a), of(b)];
  if (ofA !== null && ofB === null && isCheck(b)) return known(ofA, 1, alpha);
  if (ofB !== null && ofA === null && isCheck(a)) return known(ofB, -1, alpha);
  return null;
}

function amongAll({ differences, alpha }: Inference, a: Treatment, b: Treatment): DifferenceBetween | null {
  for (const pair of differences) {
    if (same(pair.a, a) && same(pair.b, b)) return known(pair, 1, alpha);
    if (same(pair.a, b) && same(pair.b, a)) return known(pair, -1, alpha);
  }
  return null;
}

function meanOf(
  descriptions: readonly TreatmentDescription[],
  measure: Measure,
  levels: Treatment,
): number | null {
  const fitting = descriptions.filter(({ treatment }) => fits(treatment, levels));
  return fitting.length === 1 ? (fitting[0]![measure]?.mean ?? null) : null;
}
