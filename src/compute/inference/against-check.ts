import { say } from '../../model/say.ts';
import type { Inference } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { correlationOf } from '../../statistics/dunnett/correlation.ts';
import { dunnett } from '../../statistics/dunnett/dunnett.ts';
import { entryOf } from '../../statistics/linear-model/matrix.ts';
import type { Family } from './families.ts';

type AgainstCheck = Inference['against_check'][number];

export interface FamilyAgainstCheck {
  rows: AgainstCheck[];
  /** The seed of the directions that the chances were averaged over; null where nothing was drawn. */
  seed: number | null;
}

/**
 * Every level of a factor against its check by Dunnett's method, two-sided, with simultaneous limits. Only
 * for the family of a tested factor by itself that names a check; correlations are those of the estimated
 * differences, so that unequal replication and mixed models are allowed for.
 */
export function againstCheck(trial: Trial, family: Family, alpha: number): FamilyAgainstCheck {
  const none = { rows: [], seed: null };
  const [id] = family.term.factors;
  if (family.term.factors.length !== 1 || id === undefined || family.untested !== null) return none;
  const check = (trial.metadata.factors ?? []).find((factor) => factor.id === id)?.check;
  const at = family.means.findIndex(({ treatment }) => treatment[id] === check);
  const control = family.means[at];
  if (check === undefined || control === undefined || control.mean === null) return none;
  const comparisons = family.marginal.differences.flatMap((pair) => {
    if (pair.a !== at && pair.b !== at) return [];
    const other = pair.a === at ? pair.b : pair.a;
    const estimate = pair.estimate === null ? null : pair.a === at ? -pair.estimate : pair.estimate;
    return [{ other, estimate, se: pair.se, df: pair.df, reason: pair.reason }];
  });
  const known = comparisons.filter(({ se }) => se !== null);
  const distribution = known.length === 0 ? null : dunnett(correlationOf(covariances(family, at, known)));
  const rows = comparisons.map(({ other, estimate, se, df, reason }) => {
    const { treatment, mean } = family.means[other]!;
    const shared = {
      treatment,
      estimate,
      percent_of_check: mean === null || control.mean! <= 0 ? null : (100 * mean) / control.mean!,
    };
    if (estimate === null || se === null || df === null || distribution === null) {
      const why = say(reason ?? 'no standard error could be had');
      return { ...shared, lower: null, upper: null, p_adjusted: null, reason: why };
    }
    const reach = distribution.criticalValue(alpha, df) * se;
    return {
      ...shared,
      lower: estimate - reach,
      upper: estimate + reach,
      p_adjusted: distribution.upperTail(estimate / se, df),
    };
  });
  return { rows, seed: distribution?.seed ?? null };
}

/** Covariances of the differences from the check, from those of the means. */
function covariances(family: Family, at: number, comparisons: readonly { other: number }[]): number[][] {
  const { covariance } = family.marginal;
  return comparisons.map((one) =>
    comparisons.map(
      (two) =>
        entryOf(covariance, one.other, two.other) -
        entryOf(covariance, one.other, at) -
        entryOf(covariance, at, two.other) +
        entryOf(covariance, at, at),
    ),
  );
}
