import { describe, expect, test } from 'vitest';
import {
  analysisOfVarianceWithStrata,
  type StrataDesign,
} from '../../../src/statistics/linear-model/analysis-of-variance-with-strata.ts';
import { marginalMeans } from '../../../src/statistics/linear-model/marginal-means.ts';
import { restrictedMaximumLikelihood } from '../../../src/statistics/linear-model/restricted-maximum-likelihood.ts';
import { termTests } from '../../../src/statistics/linear-model/term-tests.ts';
import { seededRandom } from '../../../src/statistics/seeded-random.ts';
import { expectClose } from '../../support/close.ts';
import { runR } from '../../support/r.ts';

interface Line {
  stratum: string;
  term: string;
  df: number;
  ss: number;
  f: number | null;
  p: number | null;
}

/** R's aov with error strata, as a list of lines. */
async function aovInR(design: StrataDesign, formula: string): Promise<Line[]> {
  const given: Record<string, number[]> = { y: [...design.responses] };
  for (const { name, values } of design.factors) given[name] = [...values];
  for (const { name, groups } of design.strata) given[name] = [...groups];
  const names = [...design.factors, ...design.strata].map(({ name }) => name);
  return (await runR(
    `${names.map((name) => `${name} <- factor(${name})`).join('\n')}
     # Pots are numbered through, so that R finds the tanks' columns twice and warns.
     strata <- summary(suppressWarnings(aov(${formula})))
     unlist(lapply(names(strata), function(stratum) { t <- strata[[stratum]][[1]]
       lapply(seq_len(nrow(t)), function(i) list(stratum = sub("Error: ", "", stratum), term = trimws(rownames(t)[i]),
         df = t[i, 1], ss = t[i, 2], f = if (is.null(t$F)) NA_real_ else t[i, "F value"],
         p = if (is.null(t$F)) NA_real_ else t[i, "Pr(>F)"])) }), recursive = FALSE)`,
    given,
  )) as unknown as Line[];
}

const tanks = 6;
const index = Array.from({ length: tanks * 3 * 2 * 4 }, (_, i) => i);
const pot = index.map((i) => Math.floor(i / 4));
const tank = pot.map((p) => Math.floor(p / 6));
const random = seededRandom(77);
const tankEffects = Array.from({ length: tanks }, () => 15 * random.normal());
const potEffects = Array.from({ length: 36 }, () => 8 * random.normal());
const strength = tank.map((t) => t % 2);
const cultivar = pot.map((p) => p % 3);

const threeStrata: StrataDesign = {
  responses: index.map((i) => {
    const fixed = 120 + 6 * strength[i]! + 9 * cultivar[i]!;
    return (
      Math.round(10 * (fixed + tankEffects[tank[i]!]! + potEffects[pot[i]!]! + 10 * random.normal())) / 10
    );
  }),
  factors: [
    { name: 'strength', levels: 2, values: strength },
    { name: 'cultivar', levels: 3, values: cultivar },
  ],
  blocks: [],
  treatments: [['strength'], ['cultivar'], ['strength', 'cultivar']],
  strata: [
    { name: 'tank', groups: tank },
    { name: 'pot', groups: pot },
  ],
  residual: 'plant',
};

describe('solution strengths on tanks, cultivars on pots, plants in pots', () => {
  test('as by aov with strata in R', async () => {
    const lines = await aovInR(threeStrata, 'y ~ strength * cultivar + Error(tank + pot)');
    const { rows, balanced } = analysisOfVarianceWithStrata(threeStrata);
    expect(balanced).toBe(true);
    const stratumInR: Record<string, string> = { tank: 'tank', pot: 'pot', Within: 'plant' };
    expect(lines.length).toBe(rows.length);
    for (const line of lines) {
      const term = line.term === 'Residuals' ? null : line.term;
      const row = rows.find((one) => one.stratum === stratumInR[line.stratum] && one.term === term)!;
      expect(row.df).toBe(line.df);
      expectClose(row.sumOfSquares, line.ss, 1e-9, line.term);
      if (line.f === null) continue;
      expectClose(row.f, line.f, 1e-9, line.term);
      expectClose(row.p, line.p!, 1e-8, line.term);
    }
  });

  test('REML of the same: variances, F, degrees of freedom and standard errors agree', () => {
    const { rows, varianceComponents, effects } = analysisOfVarianceWithStrata(threeStrata);
    const fit = restrictedMaximumLikelihood({
      ...threeStrata,
      fixed: threeStrata.treatments,
      random: threeStrata.strata,
    });
    if ('reason' in fit) throw new Error(fit.reason);
    expect(varianceComponents.every(({ negative }) => !negative)).toBe(true);
    fit.components.forEach((component, k) => {
      expectClose(component.variance, varianceComponents[k]!.variance!, 1e-8, component.term);
    });
    for (const line of termTests(fit.effects, fit.model)) {
      const row = rows.find(({ term }) => term === line.term)!;
      expectClose(line.f, row.f!, 1e-8, line.term);
      expectClose(line.errorDf, row.errorDf!, 1e-6, line.term);
    }
    const ours = marginalMeans(effects!.fixed, effects!.model, ['strength', 'cultivar']);
    const theirs = marginalMeans(fit.effects, fit.model, ['strength', 'cultivar']);
    for (const list of ['means', 'differences'] as const) {
      ours[list].forEach((one, k) => {
        expectClose(one.estimate, theirs[list][k]!.estimate!, 1e-9);
        expectClose(one.se, theirs[list][k]!.se!, 1e-8);
        expectClose(one.df, theirs[list][k]!.df!, 1e-6);
      });
    }
  });

  test('one tank for each strength: strength is not tested, cultivars still are', () => {
    const few = index.filter((i) => tank[i]! < 2);
    const pick = (values: readonly number[]) => few.map((i) => values[i]!);
    const { rows, effects } = analysisOfVarianceWithStrata({
      ...threeStrata,
      responses: pick(threeStrata.responses),
      factors: threeStrata.factors.map((factor) => ({ ...factor, values: pick(factor.values) })),
      strata: threeStrata.strata.map(({ name, groups }) => ({ name, groups: pick(groups) })),
    });
    expect(rows.find(({ term }) => term === 'strength')).toMatchObject({
      stratum: 'tank',
      errorDf: 0,
      f: null,
      p: null,
    });
    expect(rows.find(({ term }) => term === 'cultivar')).toMatchObject({
      stratum: 'pot',
      error: 'pot',
      errorDf: 6,
    });
    const cultivars = marginalMeans(effects!.fixed, effects!.model, ['cultivar']);
    expect(cultivars.differences[0]!.se).toBeGreaterThan(0);
    expect(cultivars.means[0]).toMatchObject({
      se: null,
      reason: 'no degrees of freedom are left for error',
    });
    expect(marginalMeans(effects!.fixed, effects!.model, ['strength']).differences[0]!.se).toBeNull();
  });
});

test('a Latin square with plants in its plots: rows and columns fixed, plots the error, as in R', async () => {
  const cell = Array.from({ length: 48 }, (_, i) => Math.floor(i / 3));
  const design: StrataDesign = {
    responses: cell.map((c) => Math.round(100 + 5 * (c % 4) + 20 * random.uniform() + 3 * ((c * 7) % 5))),
    factors: [
      { name: 'row', levels: 4, values: cell.map((c) => Math.floor(c / 4)) },
      { name: 'column', levels: 4, values: cell.map((c) => c % 4) },
      { name: 'cultivar', levels: 4, values: cell.map((c) => ((c % 4) + Math.floor(c / 4)) % 4) },
    ],
    blocks: [['row'], ['column']],
    treatments: [['cultivar']],
    strata: [{ name: 'cell', groups: cell }],
    residual: 'plant',
  };
  const lines = await aovInR(design, 'y ~ row + column + cultivar + Error(cell)');
  const { rows, balanced } = analysisOfVarianceWithStrata(design);
  expect(balanced).toBe(true);
  for (const line of lines) {
    const term = line.term === 'Residuals' ? null : line.term;
    const row = rows.find(
      (one) =>
        one.term === term && (term !== null || one.stratum === (line.stratum === 'cell' ? 'cell' : 'plant')),
    )!;
    expect(row.df).toBe(line.df);
    expectClose(row.sumOfSquares, line.ss, 1e-9, line.term);
    if (line.f !== null) expectClose(row.f, line.f, 1e-9, line.term);
  }
});

test('treatments partly confounded with the strata are not called balanced', () => {
  const design: StrataDesign = {
    responses: [3, 5, 4, 6, 9, 8, 8, 7],
    factors: [{ name: 'cultivar', levels: 2, values: [0, 0, 0, 1, 1, 1, 1, 0] }],
    blocks: [],
    treatments: [['cultivar']],
    strata: [{ name: 'tank', groups: [0, 0, 0, 0, 1, 1, 1, 1] }],
    residual: 'plant',
  };
  const { balanced, effects, rows } = analysisOfVarianceWithStrata(design);
  expect(balanced).toBe(false);
  expect(effects).toBeNull();
  expect(rows.filter(({ term }) => term === 'cultivar').map(({ stratum }) => stratum)).toEqual([
    'tank',
    'plant',
  ]);
});
