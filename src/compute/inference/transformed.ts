import type { Inference } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { brownForsythe } from '../../statistics/brown-forsythe.ts';
import { tUpperQuantile } from '../../statistics/distributions/student-t.ts';
import { leastSquares } from '../../statistics/linear-model/least-squares.ts';
import { marginalMeans } from '../../statistics/linear-model/marginal-means.ts';
import { matrixFromRows } from '../../statistics/linear-model/matrix.ts';
import { meanOf } from '../../statistics/mean.ts';
import { standardDeviationOf } from '../../statistics/standard-deviation.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import { stratumOf } from './error-degrees.ts';
import type { FittedModel } from './fitted-model.ts';
import type { UnitMeans } from './unit-means.ts';

type Transformed = NonNullable<Inference['transformed']>;

/** Slopes of log spread on log mean above which a scale is taken: midway to those that the scales straighten. */
const slopeOfSquareRoot = 0.25;
const slopeOfLogarithm = 0.75;

/**
 * The scale on which spread would no longer grow with the mean: a slope of log standard deviation on log
 * mean about 1 calls for logarithms, about one half for square roots. Null where spreads do not differ by
 * Brown and Forsythe's test, where spread does not grow, or with fewer than three treatments.
 * Reference: M. S. Bartlett (1947), The use of transformations, Biometrics 3, 39-52.
 */
export function scaleFor(units: UnitMeans, alpha: number): Transformed['scale'] | null {
  const groups = [...Map.groupBy(units.units, ({ treatment }) => treatment).values()].map((members) =>
    members.map(({ mean }) => mean),
  );
  const test = brownForsythe(groups);
  if (test.p === null || test.p >= alpha) return null;
  const spreads = groups
    .filter((group) => group.length >= 2)
    .map((group) => ({ mean: meanOf(group), sd: standardDeviationOf(group) }))
    .filter(({ mean, sd }) => mean > 0 && sd > 0);
  if (spreads.length < 3) return null;
  const line = leastSquares(
    matrixFromRows(spreads.map(({ mean }) => [1, Math.log(mean)])),
    spreads.map(({ sd }) => Math.log(sd)),
  );
  const slope = line.coefficients[1]!;
  if (slope < slopeOfSquareRoot) return null;
  const positive = units.units.every(({ mean }) => mean > 0);
  return slope >= slopeOfLogarithm && positive ? 'logarithm' : 'square root';
}

const scales = {
  logarithm: { to: Math.log, from: Math.exp },
  'square root': { to: Math.sqrt, from: (value: number) => Math.max(0, value) ** 2 },
};

/** The same analysis on the scale that the spreads call for, its means turned back; null where they call for none. */
export function transformedAnalysis(
  trial: Trial,
  design: AnalysisDesign,
  degrees: ReadonlyMap<string, number>,
  context: {
    plain: FittedModel;
    units: UnitMeans;
    alpha: number;
    /** Whether a term is tested on its own scale: what is not has no test on another one either. */
    isTested: (term: string) => boolean;
    fit: (design: AnalysisDesign) => FittedModel | { reason: string };
  },
): Transformed | null {
  const { plain, units, alpha, isTested } = context;
  if (trial.metadata.variables[0]!.kind === 'scored') return null;
  const scale = scaleFor(units, alpha);
  const lowest = Math.min(...design.observations.map(({ value }) => value));
  if (scale === null || lowest < 0 || (scale === 'logarithm' && lowest <= 0)) return null;
  const { to, from } = scales[scale];
  const observations = design.observations.map((each) => ({ ...each, value: to(each.value) }));
  const fit = context.fit({ ...design, observations });
  if ('reason' in fit) return null;
  const terms = design.terms.map(({ name }) => {
    const row = isTested(name) ? fit.anova.find(({ term }) => term === name) : undefined;
    return { term: name, f: row?.f ?? null, p: row?.p ?? null };
  });
  const crosses = terms.some(({ term, p }) => {
    const before = plain.anova.find((row) => row.term === term)?.p ?? null;
    return p !== null && before !== null && p < alpha !== before < alpha;
  });
  const means = design.terms.flatMap((term) => {
    const greatestDf = degrees.get(stratumOf(design, term.unit))!;
    return marginalMeans(fit.effects, fit.model, term.factors, { greatestDf }).means.map((mean) => {
      const known = mean.estimate !== null && mean.se !== null && mean.df !== null;
      const reach = known ? tUpperQuantile(alpha / 2, mean.df!) * mean.se! : null;
      return {
        treatment: Object.fromEntries(
          term.factors.map((id, index) => [id, design.levels.get(id)![mean.levels[index]!]!]),
        ),
        mean: mean.estimate === null ? null : from(mean.estimate),
        lower: reach === null ? null : from(mean.estimate! - reach),
        upper: reach === null ? null : from(mean.estimate! + reach),
      };
    });
  });
  return { scale, terms, means, conclusion_changes: crosses };
}
