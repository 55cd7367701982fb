import { say } from '../../model/say.ts';
import type { Inference } from '../../model/findings.ts';
import type { Treatment } from '../../model/trial.ts';
import { tUpperQuantile } from '../../statistics/distributions/student-t.ts';
import { letters } from '../../statistics/letters.ts';
import { marginalMeans, type MarginalMeans } from '../../statistics/linear-model/marginal-means.ts';
import { tukeyKramer } from '../../statistics/tukey-kramer.ts';
import type { AnalysisDesign, TreatmentTerm } from './analysis-design.ts';
import type { FittedModel } from './fitted-model.ts';

export type Mean = Inference['means'][number];
export type Difference = Inference['differences'][number];

/** The adjusted means of one term, and every pair of them: what adjustment and letters stay within. */
export interface Family {
  term: TreatmentTerm;
  /** Why the term is not tested, or null. */
  untested: string | null;
  marginal: MarginalMeans;
  means: Mean[];
  differences: Difference[];
}

/** The family of a term's adjusted means, compared by Tukey and Kramer's method. */
export function familyOf(
  design: AnalysisDesign,
  fit: FittedModel,
  term: TreatmentTerm,
  options: { alpha: number; greatestDf: number; untested: string | null },
): Family {
  const { alpha, greatestDf, untested } = options;
  const marginal = marginalMeans(fit.effects, fit.model, term.factors, { greatestDf });
  const treatments = marginal.means.map(({ levels }) => treatmentOf(design, term, levels));
  const estimates = withoutRounding(marginal.means.map(({ estimate }) => estimate));
  if (untested !== null) {
    const means = treatments.map((treatment, index) => untestedMean(treatment, estimates[index]!, untested));
    return { term, untested, marginal, means, differences: [] };
  }
  // Means beside blocks may be out of reach while their differences are not.
  const compared = marginal.differences.filter(({ estimate }) => estimate !== null);
  const groups = new Set(compared.flatMap(({ a, b }) => [a, b])).size;
  const differences = marginal.differences.map((pair) =>
    differenceOf(pair, treatments[pair.a]!, treatments[pair.b]!, groups, alpha),
  );
  const display = lettersOf(marginal, differences, alpha);
  const means = marginal.means.map((mean, index): Mean => {
    const reach = mean.df === null || mean.se === null ? null : tUpperQuantile(alpha / 2, mean.df) * mean.se;
    return {
      treatment: treatments[index]!,
      mean: estimates[index]!,
      se: mean.se,
      df: mean.df,
      lower: reach === null ? null : estimates[index]! - reach,
      upper: reach === null ? null : estimates[index]! + reach,
      letters: display[index] ?? null,
      ...(mean.reason === null ? {} : { reason: mean.reason }),
    };
  });
  return { term, untested, marginal, means, differences };
}

/**
 * A mean that is nothing but rounding beside the others is 0: all plants of a treatment may have died, and
 * others in percent of it would be boundless.
 */
function withoutRounding(estimates: readonly (number | null)[]): (number | null)[] {
  const largest = Math.max(...estimates.map((estimate) => Math.abs(estimate ?? 0)));
  return estimates.map((estimate) =>
    estimate !== null && Math.abs(estimate) <= 1e-12 * largest ? 0 : estimate,
  );
}

function treatmentOf(design: AnalysisDesign, term: TreatmentTerm, levels: readonly number[]): Treatment {
  return Object.fromEntries(term.factors.map((id, index) => [id, design.levels.get(id)![levels[index]!]!]));
}

function untestedMean(treatment: Treatment, mean: number | null, reason: string): Mean {
  return { treatment, mean, se: null, df: null, lower: null, upper: null, letters: null, reason };
}

/** One difference of a family with so many means. */
function differenceOf(
  pair: MarginalMeans['differences'][number],
  a: Treatment,
  b: Treatment,
  groups: number,
  alpha: number,
): Difference {
  const { estimate, se, df } = pair;
  if (estimate === null || se === null || df === null) {
    const reason = say(pair.reason ?? 'no standard error could be had');
    return { a, b, estimate, se, df, lower: null, upper: null, p_adjusted: null, reason };
  }
  const { lower, upper, p } = tukeyKramer(estimate, se, df, groups, alpha);
  return { a, b, estimate, se, df, lower, upper, p_adjusted: p };
}

/** Letters of the means whose every difference has a p, from unrounded p; null for the others. */
function lettersOf(
  marginal: MarginalMeans,
  differences: readonly Difference[],
  alpha: number,
): (string | null)[] {
  const known = marginal.means.flatMap(({ estimate }, index) => (estimate === null ? [] : [index]));
  const size = marginal.means.length;
  const p = Array.from({ length: size }, () => new Array<number | null>(size).fill(1));
  marginal.differences.forEach(({ a, b }, index) => {
    p[a]![b] = p[b]![a] = differences[index]!.p_adjusted;
  });
  const complete = known.every((a) => known.every((b) => p[a]![b] !== null));
  const display = new Array<string | null>(size).fill(null);
  if (!complete || known.length < 2) return display;
  const descending = [...known].sort((a, b) => marginal.means[b]!.estimate! - marginal.means[a]!.estimate!);
  const found = letters(
    descending.map((a) => descending.map((b) => p[a]![b]!)),
    alpha,
  );
  descending.forEach((index, rank) => {
    display[index] = found[rank]!;
  });
  return display;
}
