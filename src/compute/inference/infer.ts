import { say } from '../../model/say.ts';
import type { Inference } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { meanOf } from '../../statistics/mean.ts';
import { normalScores } from '../../statistics/normal-scores.ts';
import type { Cut } from '../cuts.ts';
import { againstCheck } from './against-check.ts';
import { analyseByStrata } from './analyse-by-strata.ts';
import { type AnalysisDesign, analysisDesign, type TreatmentTerm } from './analysis-design.ts';
import { checksOf } from './checks.ts';
import { errorDegrees, stratumOf } from './error-degrees.ts';
import { type Family, familyOf } from './families.ts';
import { fitByLikelihood } from './fit-by-likelihood.ts';
import { fitByStrata } from './fit-by-strata.ts';
import type { FittedModel } from './fitted-model.ts';
import { leastSignificantDifference } from './least-significant-difference.ts';
import type { Measure, Observation } from './observations.ts';
import { plantsPerUnit } from './plants-per-unit.ts';
import { randomisationTestOf } from './randomisation.ts';
import { isSquare, rankTestOf } from './rank-test.ts';
import { unitsOfFactors } from './replicates.ts';
import { residualVariation } from './residual-variation.ts';
import { transformedAnalysis } from './transformed.ts';
import { unitMeans } from './unit-means.ts';
import {
  confoundedWithBlock,
  modelInWords,
  noTest,
  notRandomised,
  nothingVaries,
  scoresOfSeveralStrata,
  scoresOfSquares,
  withoutCombinations,
  withoutErrorDegrees,
  withoutReplicates,
} from './verdict-words.ts';

/** The level of every test, interval and letter. */
export const alpha = 0.05;

/** An entry that says why there is no test: description only, no p, interval or letter. */
export function notTested(
  trial: Trial,
  measure: Measure,
  cut: Cut,
  observations: readonly Observation[],
  reason: string,
): Inference {
  return {
    measure,
    cut,
    units: unitsOfFactors(trial, observations),
    verdict: 'not tested',
    reason,
    method: null,
    model: '',
    anova: [],
    variance_components: [],
    means: [],
    differences: [],
    against_check: [],
    least_significant_difference: null,
    cv_percent: null,
    alpha,
    checks: null,
    randomisation_test: null,
  };
}

/** What the design allows to be said of one measure of at least two treatments. */
export function infer(
  trial: Trial,
  measure: Measure,
  cut: Cut,
  observations: readonly Observation[],
): Inference {
  const design = analysisDesign(trial, observations);
  const degrees = errorDegrees(design);
  const untested = (reason: string) => notTested(trial, measure, cut, observations, reason);
  const lacking = new Map(design.terms.map((term) => [term.name, whyUntested(trial, design, degrees, term)]));
  if (design.terms.every(({ name }) => lacking.get(name) !== null)) {
    return untested(distinct([...lacking.values()]).join(' '));
  }
  if (trial.metadata.variables[0]!.kind === 'scored') {
    const reasons = distinct([...lacking.values()]);
    return reasons.length > 0 ? untested(reasons.join(' ')) : inferFromRanks(trial, design, untested);
  }
  const fit = fitModel(design, degrees);
  if ('reason' in fit) return untested(noTest(fit.reason));
  // A factor without an F because combinations were not grown has an error all the same: its levels are
  // compared as far as they can be estimated.
  const partly = new Set<string>();
  for (const row of fit.anova) {
    if (lacking.get(row.term) === null && row.f === null) {
      if (lacksCombinations(row.reason)) partly.add(row.term);
      lacking.set(row.term, reasonOfRow(trial, design, row.term, row.reason));
    }
  }
  const tested = design.terms.filter(({ name }) => lacking.get(name) === null);
  if (tested.length === 0) return untested(distinct([...lacking.values()]).join(' '));
  const families = design.terms.map((term) =>
    familyOf(design, fit, term, {
      alpha,
      greatestDf: degrees.get(stratumOf(design, term.unit))!,
      untested: partly.has(term.name) ? null : (lacking.get(term.name) ?? null),
    }),
  );
  const reasons = distinct([...lacking.values()]);
  if (!trial.metadata.design.randomised) reasons.push(notRandomised());
  const againstChecks = families.map((family) => againstCheck(trial, family, alpha));
  const units = unitMeans(design);
  const scores = normalScores(units.fit.residuals);
  return {
    measure,
    cut,
    units: unitsOfFactors(trial, observations),
    verdict: 'tested',
    reason: reasons.join(' '),
    method: fit.method,
    model: `${modelInWords(trial, measure, design.blocks, design.terms, strataWithError(degrees))}; ${say(fit.why)}`,
    anova: fit.anova.map((row) => withholdUntested(row, lacking.get(row.term) ?? null, degrees)),
    variance_components: fit.varianceComponents,
    means: families.flatMap((family) => family.means),
    differences: families.flatMap((family) => family.differences),
    against_check: againstChecks.flatMap(({ rows }) => rows),
    least_significant_difference: leastSignificantDifference(design, fit, families, alpha),
    cv_percent: residualVariation(design, fit, units.units.length),
    alpha,
    checks: checksOf(design, units, alpha),
    randomisation_test: randomisationTestOf(trial, design, units, alpha),
    ...optional('against_check_seed', againstChecks.find(({ seed }) => seed !== null)?.seed ?? null),
    ...optional('sed', standardErrorsOfDifferences(families)),
    ...optional('plants_per_unit', plantsPerUnit(design, fit)),
    ...optional(
      'transformed',
      transformedAnalysis(trial, design, degrees, {
        plain: fit,
        units,
        alpha,
        isTested: (term) => lacking.get(term) === null,
        fit: (other) => fitModel(other, degrees),
      }),
    ),
    ...optional('rank_test', rankTestOf(trial, design, units)),
    residuals: units.units.map(({ name, container }, index) => ({
      unit: name,
      container,
      fitted: units.fit.fitted[index]!,
      residual: units.fit.residuals[index]!,
      normal_score: scores[index]!,
    })),
  };
}

/** Scores are marks, not amounts: medians and a test on ranks, no means, and no sums of squares. */
function inferFromRanks(
  trial: Trial,
  design: AnalysisDesign,
  untested: (reason: string) => Inference,
): Inference {
  const ranked = rankTestOf(trial, design, unitMeans(design));
  if (ranked === null) return untested(isSquare(design) ? scoresOfSquares() : scoresOfSeveralStrata());
  if (ranked.p === null) return { ...untested(noTest(ranked.reason ?? '')), rank_test: ranked };
  return {
    ...untested(trial.metadata.design.randomised ? '' : notRandomised()),
    verdict: 'tested',
    model: say('ranks of {units} by {method}', { units: say(`${design.finest}s`), method: ranked.method }),
    rank_test: ranked,
  };
}

/** Fits the model of a design: by strata where it is balanced, else by likelihood. */
export function fitModel(
  design: AnalysisDesign,
  degrees: ReadonlyMap<string, number>,
): FittedModel | { reason: string } {
  return fitByStrata(analyseByStrata(design)) ?? fitByLikelihood(design, degrees);
}

function whyUntested(
  trial: Trial,
  design: AnalysisDesign,
  degrees: ReadonlyMap<string, number>,
  term: TreatmentTerm,
): string | null {
  if (degrees.get(stratumOf(design, term.unit))! > 0) return null;
  const replicates = unitsOfFactors(trial, design.observations).filter(({ factor }) =>
    term.factors.includes(factor),
  );
  const single = replicates.every((unit) => Object.values(unit.replicates).every((count) => count <= 1));
  return single ? withoutReplicates(trial, term) : withoutErrorDegrees(trial, term);
}

function reasonOfRow(trial: Trial, design: AnalysisDesign, name: string, reason: string | undefined): string {
  const term = design.terms.find((each) => each.name === name)!;
  if (reason?.startsWith('cannot be told apart')) return confoundedWithBlock(trial, term);
  if (reason === 'the error is zero to rounding') return nothingVaries();
  if (lacksCombinations(reason)) return withoutCombinations(trial, term);
  return reason === undefined ? withoutErrorDegrees(trial, term) : `${name}: ${say(reason)}.`;
}

/** Whether a term has no F since not all combinations of its factor with others were grown. */
function lacksCombinations(reason: string | undefined): boolean {
  return reason?.startsWith('cannot be estimated beside') ?? false;
}

function withholdUntested(
  row: Inference['anova'][number],
  reason: string | null,
  degrees: ReadonlyMap<string, number>,
): Inference['anova'][number] {
  if (reason === null) return row;
  const noError = row.error !== null && degrees.get(row.error) === 0;
  return { ...row, f: null, p: null, error_df: noError ? 0 : row.error_df, reason };
}

function distinct(reasons: readonly (string | null)[]): string[] {
  return [...new Set(reasons.filter((reason) => reason !== null))];
}

function strataWithError(degrees: ReadonlyMap<string, number>): string[] {
  return [...degrees].filter(([, df]) => df > 0).map(([name]) => name);
}

/** Smallest, mean and largest standard error among the tested differences, where they differ. */
function standardErrorsOfDifferences(families: readonly Family[]): NonNullable<Inference['sed']> | null {
  const errors = families.flatMap(({ differences }) =>
    differences.flatMap(({ se }) => (se === null ? [] : [se])),
  );
  if (errors.length === 0) return null;
  const smallest = Math.min(...errors);
  const largest = Math.max(...errors);
  return largest - smallest <= 1e-9 * largest ? null : { smallest, mean: meanOf(errors), largest };
}

function optional<K extends string, V>(key: K, value: V | null): Partial<Record<K, V>> {
  return value === null ? {} : ({ [key]: value } as Record<K, V>);
}
