import { describe, expect, test } from 'vitest';
import { marginalMeans } from '../../../src/statistics/linear-model/marginal-means.ts';
import {
  type MixedDesign,
  type RemlFit,
  restrictedMaximumLikelihood,
} from '../../../src/statistics/linear-model/restricted-maximum-likelihood.ts';
import { termTests } from '../../../src/statistics/linear-model/term-tests.ts';
import barley from '../../published/barley/barley.json' with { type: 'json' };
import mint from '../../published/mint/mint.json' with { type: 'json' };
import oats from '../../published/oats/oats.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';
import { factorOf, groupsOf } from '../../support/factor-of.ts';
import { numberFromR, runR } from '../../support/r.ts';
import { restrictedLikelihoodInR } from '../../support/restricted-likelihood-in-r.ts';

function fitted(design: MixedDesign): RemlFit {
  const fit = restrictedMaximumLikelihood(design);
  if ('reason' in fit) throw new Error(fit.reason);
  return fit;
}

const varianceOf = (fit: RemlFit, term: string) => fit.components.find((one) => one.term === term)?.variance;

describe('published examples', () => {
  const oatsDesign: MixedDesign = {
    responses: oats.data.y,
    factors: [
      factorOf('block', oats.data.block),
      factorOf('variety', oats.data.variety),
      factorOf('nitro', oats.data.nitro),
    ],
    fixed: [['block'], ['variety'], ['nitro'], ['nitro', 'variety']],
    random: [{ name: 'main plot', groups: groupsOf(oats.data.block, oats.data.variety) }],
    residual: 'sub-plot',
  };

  test('oats, blocks fixed: balanced, so that REML is the analysis of variance', () => {
    const fit = fitted(oatsDesign);
    const [main, sub] = [6013.305555555573 / 10, 7968.749999999998 / 45];
    expectClose(varianceOf(fit, 'main plot'), (main - sub) / 4, 1e-9);
    expectClose(varianceOf(fit, 'sub-plot'), sub, 1e-9);
    for (const line of oats.expected.reml.fixed.satterthwaite) {
      const row = termTests(fit.effects, fit.model).find(({ term }) => term === line.term);
      const exact = [...oats.expected.strata['block:variety'], ...oats.expected.strata.Within].find(
        ({ term }) => term === line.term,
      );
      expectClose(row?.f, exact!.F!, 1e-9, line.term);
      expectClose(row?.errorDf, line.term === 'variety' ? 10 : 45, 1e-7, line.term);
      expectClose(row?.p, exact!.p!, 1e-7, line.term);
    }
    const both = marginalMeans(fit.effects, fit.model, ['variety', 'nitro']);
    const sameNitro = both.differences.find(({ a, b }) => a === 0 && b === 4);
    expectClose(sameNitro?.se, oats.expected.sed.variety_same_or_diff_nitro, 1e-9);
    expectClose(sameNitro?.df, oats.expected.sed.variety_same_nitro_satterthwaite_df, 1e-6);
  });

  test('oats, blocks random: components, log-likelihood with treatment contrasts', async () => {
    const fit = fitted({
      ...oatsDesign,
      fixed: [['variety'], ['nitro'], ['nitro', 'variety']],
      random: [{ name: 'block', groups: oatsDesign.factors[0]!.values }, ...oatsDesign.random],
    });
    const [block, main, sub] = [15875.27777777781 / 5, 6013.305555555573 / 10, 7968.749999999998 / 45];
    expectClose(varianceOf(fit, 'block'), (block - main) / 12, 1e-9);
    expectClose(varianceOf(fit, 'main plot'), (main - sub) / 4, 1e-9);
    expectClose(
      varianceOf(fit, 'block'),
      oats.expected.reml.varcomp.block,
      1e-4,
      'an optimiser of few digits',
    );
    const logDeterminant = await numberFromR(
      `d <- expand.grid(v = factor(1:3), n = factor(1:4), b = 1:6)
       as.numeric(determinant(crossprod(model.matrix(~ v * n, d)))$modulus)`,
    );
    expectClose(fit.logLikelihood - 0.5 * logDeterminant, oats.expected.reml.logLik_REML, 1e-8);
  });

  test('mint: pots random', () => {
    const fit = fitted({
      responses: mint.data.y,
      factors: [factorOf('trt', mint.data.trt)],
      fixed: [['trt']],
      random: [{ name: 'pot', groups: groupsOf(mint.data.trt, mint.data.pot) }],
      residual: 'plant',
    });
    expectClose(varianceOf(fit, 'pot'), mint.expected.varcomp_anova.unit, 1e-9);
    expectClose(varianceOf(fit, 'plant'), mint.expected.varcomp_anova.plant, 1e-9);
    const row = termTests(fit.effects, fit.model)[0];
    expectClose(row?.f, mint.expected.right.F, 1e-9);
    expectClose(row?.errorDf, 12, 1e-7);
    const { means, differences } = marginalMeans(fit.effects, fit.model, ['trt']);
    expectClose(means[0]?.se, mint.expected.se_mean, 1e-9);
    expectClose(differences[0]?.se, mint.expected.sed, 1e-9);
  });

  test('barley: five crossed variances', () => {
    const { variety, site, year } = barley.data;
    const grouping = (name: string, ...lists: (string | number)[][]) => ({
      name,
      groups: groupsOf(...lists),
    });
    const fit = fitted({
      responses: barley.data.y,
      factors: [factorOf('variety', variety)],
      fixed: [['variety']],
      random: [
        grouping('site', site),
        grouping('year', year),
        grouping('site:year', site, year),
        grouping('variety:site', variety, site),
        grouping('variety:year', variety, year),
      ],
      residual: 'residual',
    });
    // The published optimum carries about 5 digits.
    for (const [term, variance] of Object.entries(barley.expected.mixed_site_year.varcomp)) {
      expectClose(varianceOf(fit, term), variance, 2e-4, term);
    }
  });
});

/** A design as R sees it, with what R's own dense reckoning gives for it. */
interface InR {
  v: number[];
  loglik: number;
  tests: { f: number; df: number; p: number }[];
  differences: { estimate: number; se: number; df: number }[];
}

async function inR(design: MixedDesign, term: readonly string[]): Promise<InR> {
  const given: Record<string, number[]> = { y: [...design.responses] };
  for (const { name, values } of design.factors) given[`f_${name}`] = values.map((level) => level + 1);
  design.random.forEach(({ groups }, k) => (given[`g_${k}`] = [...groups]));
  const main = design.fixed.flat().filter((name, k, all) => all.indexOf(name) === k);
  const formula = design.fixed.map((names) => names.map((name) => `f_${name}`).join(':')).join(' + ');
  const assign = main.map(
    (name) => `f_${name} <- factor(f_${name}); contrasts(f_${name}) <- helmert(nlevels(f_${name}))`,
  );
  const matrices = design.random.map((_, k) => `tcrossprod(model.matrix(~ factor(g_${k}) - 1))`);
  const code = `${restrictedLikelihoodInR}
    ${assign.join('\n')}
    X <- model.matrix(~ ${formula}); at <- attr(X, "assign")
    fit <- reml(y, X, list(${[...matrices, 'diag(length(y))'].join(', ')}))
    tests <- lapply(seq_len(max(at)), function(t) as.list(fai(fit, diag(ncol(X))[at == t, , drop = FALSE])))
    means <- as.matrix(aggregate(X[, 1:ncol(X)], list(${[...term]
      .reverse()
      .map((name) => `f_${name}`)
      .join(', ')}), mean)[, -(1:${term.length})])
    of <- c(TRUE, sapply(attr(terms(~ ${formula}), "term.labels"), function(label)
      all(strsplit(label, ":")[[1]] %in% c(${term.map((name) => `"f_${name}"`).join(', ')}))))[at + 1]
    means[, !of] <- 0
    pairs <- t(combn(nrow(means), 2))
    list(v = fit$v, loglik = fit$loglik, tests = tests, differences = lapply(seq_len(nrow(pairs)), function(i) {
      L <- means[pairs[i, 1], ] - means[pairs[i, 2], ]
      list(estimate = sum(L * fit$b), se = sqrt(sum(L * (fit$C %*% L))), df = satterthwaite(fit, L))
    }))`;
  return (await runR(code, given)) as unknown as InR;
}

/** Responses from a plain generator: the design's own pattern plus a rough, repeatable noise. */
function responsesFrom(
  seed: number,
  parts: readonly (readonly [readonly number[], number])[],
  n: number,
  noise: number,
): number[] {
  let state = seed;
  const next = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647 - 0.5;
  };
  const effects = parts.map(([groups, size]) =>
    Array.from({ length: Math.max(...groups) + 1 }, () => size * next()),
  );
  return Array.from(
    { length: n },
    (_, i) => 100 + noise * next() + parts.reduce((sum, [groups], k) => sum + effects[k]![groups[i]!]!, 0),
  );
}

function blocksWithMissing(seed: number, unitSize: number): MixedDesign {
  // 4 blocks x 4 cultivars, 3 plants in a pot, with seven plants and one whole pot missing.
  const all = Array.from({ length: 48 }, (_, i) => i).filter(
    (i) => ![3, 4, 5, 10, 17, 21, 22, 30, 44, 47].includes(i),
  );
  const pot = all.map((i) => Math.floor(i / 3));
  const cultivar = pot.map((p) => p % 4);
  const block = pot.map((p) => Math.floor(p / 4));
  const potNumbers = groupsOf(pot);
  return {
    responses: responsesFrom(
      seed,
      [
        [cultivar, 30],
        [block, 20],
        [potNumbers, unitSize],
      ],
      all.length,
      12,
    ),
    factors: [
      { name: 'block', levels: 4, values: block },
      { name: 'cultivar', levels: 4, values: cultivar },
    ],
    fixed: [['block'], ['cultivar']],
    random: [{ name: 'pot', groups: potNumbers }],
    residual: 'plant',
  };
}

function splitPlotWithMissing(seed: number): MixedDesign {
  // 3 tanks for each of 2 strengths, 3 cultivars in each, 2 pots of each, 2 plants a pot, some missing.
  const all = Array.from({ length: 72 }, (_, i) => i).filter(
    (i) => ![0, 1, 7, 13, 26, 27, 40, 55, 61, 70].includes(i),
  );
  const tank = all.map((i) => Math.floor(i / 12));
  const strength = tank.map((t) => t % 2);
  const pot = all.map((i) => Math.floor(i / 2));
  const cultivar = pot.map((p) => p % 3);
  const potNumbers = groupsOf(pot);
  return {
    responses: responsesFrom(
      seed,
      [
        [tank, 25],
        [potNumbers, 18],
        [strength, 10],
        [cultivar, 30],
      ],
      all.length,
      10,
    ),
    factors: [
      { name: 'strength', levels: 2, values: strength },
      { name: 'cultivar', levels: 3, values: cultivar },
    ],
    fixed: [['strength'], ['cultivar'], ['strength', 'cultivar']],
    random: [
      { name: 'tank', groups: tank },
      { name: 'pot', groups: potNumbers },
    ],
    residual: 'plant',
  };
}

describe("unbalanced designs against R's dense reckoning of the same likelihood", () => {
  const cases: { name: string; design: MixedDesign; term: string[] }[] = [
    ...[11, 12, 13].map((seed) => ({
      name: `blocks with pots missing, ${seed}`,
      design: blocksWithMissing(seed, 20),
      term: ['cultivar'],
    })),
    ...[21, 22].map((seed) => ({
      name: `no variance between pots, ${seed}`,
      design: blocksWithMissing(seed, 0),
      term: ['cultivar'],
    })),
    ...[31, 32, 33].map((seed) => ({
      name: `split plot with plants missing, ${seed}`,
      design: splitPlotWithMissing(seed),
      term: ['strength', 'cultivar'],
    })),
  ];
  test.each(cases)('$name', async ({ design, term }) => {
    const fit = fitted(design);
    const expected = await inR(design, term);
    fit.components.forEach(({ term: name, variance }, k) => {
      expectClose(variance, expected.v[k]!, 1e-7, `variance of ${name}`);
    });
    expectClose(fit.logLikelihood, expected.loglik, 1e-10, 'log-likelihood');
    termTests(fit.effects, fit.model).forEach((row, k) => {
      expectClose(row.f, expected.tests[k]!.f, 1e-7, `F of ${row.term}`);
      expectClose(row.errorDf, expected.tests[k]!.df, 1e-6, `error degrees of freedom of ${row.term}`);
      expectClose(row.p, expected.tests[k]!.p, 1e-6, `p of ${row.term}`);
    });
    const { differences } = marginalMeans(fit.effects, fit.model, term);
    differences.forEach((difference, k) => {
      const theirs = expected.differences[k]!;
      expectClose(difference.estimate, theirs.estimate, 1e-7, 'difference');
      expectClose(difference.se, theirs.se, 1e-7, 'standard error of a difference');
      expectClose(difference.df, theirs.df, 1e-6, 'degrees of freedom of a difference');
    });
  });

  test('a variance estimated at zero is reported, and the error is not enlarged beyond the stratum of the unit', () => {
    const design = blocksWithMissing(21, 0);
    const fit = fitted(design);
    expect(fit.components[0]).toEqual({ term: 'pot', variance: 0, atZero: true });
    const [, free] = termTests(fit.effects, fit.model);
    const [, capped] = termTests(fit.effects, fit.model, { cultivar: 8 });
    expect(free!.errorDf).toBeGreaterThan(20);
    expect(capped!.errorDf).toBe(8);
    expect(capped!.f).toBe(free!.f);
    expect(capped!.p).toBeGreaterThan(free!.p!);
    const means = marginalMeans(fit.effects, fit.model, ['cultivar'], { greatestDf: 8 });
    for (const { df } of [...means.means, ...means.differences]) expect(df).toBe(8);
    const reason = 'no degrees of freedom are left for error';
    expect(termTests(fit.effects, fit.model, { cultivar: 0 })[1]).toMatchObject({ f: null, p: null, reason });
    const none = marginalMeans(fit.effects, fit.model, ['cultivar'], { greatestDf: 0 });
    expect(none.means[0]).toMatchObject({ se: null, df: null, reason });
  });

  test.each([1e-6, 1000, 28.349523125])(
    'a change of unit by %d changes the variances by its square, no F and no p',
    (factor) => {
      const design = splitPlotWithMissing(32);
      const plain = fitted(design);
      const scaled = fitted({ ...design, responses: design.responses.map((value) => value * factor) });
      scaled.components.forEach(({ variance, term }, k) => {
        expectClose(variance, plain.components[k]!.variance * factor ** 2, 1e-8, term);
      });
      const tests = termTests(plain.effects, plain.model);
      termTests(scaled.effects, scaled.model).forEach((row, k) => {
        expectClose(row.f, tests[k]!.f!, 1e-8, row.term);
        expectClose(row.errorDf, tests[k]!.errorDf!, 1e-7, row.term);
        expectClose(row.p, tests[k]!.p!, 1e-8, row.term);
      });
    },
  );

  test('a constant added to all responses changes nothing but the means', () => {
    const design = blocksWithMissing(11, 20);
    const plain = fitted(design);
    const lifted = fitted({ ...design, responses: design.responses.map((value) => value + 1e6) });
    expectClose(varianceOf(lifted, 'pot'), varianceOf(plain, 'pot')!, 1e-6);
    expectClose(lifted.effects.coefficients[0], plain.effects.coefficients[0]! + 1e6, 1e-13);
  });
});

describe('what cannot be estimated', () => {
  const pots = (responses: number[], groups: number[]) =>
    restrictedMaximumLikelihood({
      responses,
      factors: [factorOf('cultivar', [...'aaabbb'])],
      fixed: [['cultivar']],
      random: [{ name: 'pot', groups }],
      residual: 'plant',
    });

  test('values all alike', () => {
    expect(pots([5, 5, 5, 5, 5, 5], [0, 0, 1, 2, 2, 3])).toEqual({ reason: 'the error is zero to rounding' });
  });

  test('plants all alike within their pots', () => {
    expect(pots([5, 5, 6, 7, 7, 9], [0, 0, 1, 2, 2, 3])).toHaveProperty('reason');
  });

  test('a group for each observation', () => {
    expect(pots([5, 4, 6, 7, 8, 9.5], [0, 1, 2, 3, 4, 5])).toHaveProperty('reason');
  });

  test('a treatment that is the pot', () => {
    const fit = pots([5, 4, 6, 7, 8, 9.5], [0, 0, 0, 1, 1, 1]);
    expect(fit).toHaveProperty('reason');
  });
});
