import { describe, expect, test } from 'vitest';
import {
  analysisOfVarianceWithStrata,
  type StrataAnalysis,
} from '../../../src/statistics/linear-model/analysis-of-variance-with-strata.ts';
import { marginalMeans } from '../../../src/statistics/linear-model/marginal-means.ts';
import barley from '../../published/barley/barley.json' with { type: 'json' };
import mint from '../../published/mint/mint.json' with { type: 'json' };
import npk from '../../published/npk/npk.json' with { type: 'json' };
import oats from '../../published/oats/oats.json' with { type: 'json' };
import { plantGrowth } from '../../published/plant-growth/plant-growth.ts';
import { expectClose } from '../../support/close.ts';
import { factorOf, groupsOf } from '../../support/factor-of.ts';

interface Published {
  term: string;
  df: number;
  ss: number;
  ms: number;
  F?: number | null;
  p?: number | null;
}

function expectRow(
  analysis: StrataAnalysis,
  stratum: string | null,
  expected: Published,
  name?: string,
): void {
  const isResidual = expected.term.toLowerCase() === 'residuals' || expected.term === 'residual';
  const term = isResidual ? null : (name ?? expected.term);
  const row = analysis.rows.find((candidate) => candidate.term === term && candidate.stratum === stratum);
  const what = `${expected.term} in ${stratum}`;
  expect(row?.df, what).toBe(expected.df);
  expectClose(row?.sumOfSquares, expected.ss, 1e-9, `${what}, sum of squares`);
  expectClose(row?.meanSquare, expected.ms, 1e-9, `${what}, mean square`);
  if (isResidual) return;
  expectClose(row?.f, expected.F!, 1e-9, `${what}, F`);
  expectClose(row?.p, expected.p!, 1e-8, `${what}, p`);
}

describe('published examples', () => {
  const npkFactors = ['block', 'N', 'P', 'K'].map((name) => factorOf(name, npk.data[name as 'N']));
  const npkTerms = [['N'], ['P'], ['K'], ['N', 'P'], ['N', 'K'], ['P', 'K'], ['N', 'P', 'K']];

  test('npk: with fixed blocks each term meets the published line and N:P:K is not estimable', () => {
    const analysis = analysisOfVarianceWithStrata({
      responses: npk.data.y,
      factors: npkFactors,
      blocks: [['block']],
      treatments: npkTerms,
      strata: [],
      residual: 'plot',
    });
    expect(analysis.balanced).toBe(true);
    for (const line of npk.expected.anova_block_fixed) {
      expectRow(analysis, line.term === 'block' ? null : 'plot', line);
    }
    const aliased = analysis.rows.find((row) => row.term === 'N:P:K');
    expect(aliased).toMatchObject({ df: 0, f: null, p: null, sumOfSquares: null });
    expect(aliased?.reason).toMatch(/cannot be told apart from blocks/);
    for (const factor of ['N', 'P', 'K'] as const) {
      const { means, differences } = marginalMeans(analysis.effects!.fixed, analysis.effects!.model, [
        factor,
      ]);
      npk.expected.main_means[factor].forEach((line, k) => {
        expectClose(means[k]?.estimate, line.emmean, 1e-12);
        expectClose(means[k]?.se, line.SE, 1e-9);
        expectClose(means[k]?.df, 12, 1e-12);
      });
      expectClose(differences[0]?.se, npk.expected.sed_main_effect, 1e-9);
    }
    expect(
      marginalMeans(analysis.effects!.fixed, analysis.effects!.model, ['N', 'P', 'K']).means[0],
    ).toMatchObject({
      estimate: null,
      reason: expect.stringMatching(/not estimable/) as string,
    });
  });

  test('npk: with blocks as a stratum N:P:K is tested between blocks on 4 degrees of freedom', () => {
    const analysis = analysisOfVarianceWithStrata({
      responses: npk.data.y,
      factors: npkFactors.slice(1),
      blocks: [],
      treatments: npkTerms,
      strata: [{ name: 'block', groups: npkFactors[0]!.values }],
      residual: 'Within',
    });
    for (const [stratum, lines] of Object.entries(npk.expected.anova_error_strata)) {
      for (const line of lines) expectRow(analysis, stratum, line);
    }
  });

  const oatsFactors = [
    factorOf('block', oats.data.block),
    factorOf('variety', oats.data.variety),
    factorOf('nitro', oats.data.nitro),
  ];
  const mainPlots = groupsOf(oats.data.block, oats.data.variety);
  const oatsTerms = [['variety'], ['nitro'], ['nitro', 'variety']];

  test('oats: the variety of a split plot is tested against main plots (p 0.272), not on 55 (p 0.037)', () => {
    const analysis = analysisOfVarianceWithStrata({
      responses: oats.data.y,
      factors: oatsFactors,
      blocks: [['block']],
      treatments: oatsTerms,
      strata: [{ name: 'block:variety', groups: mainPlots }],
      residual: 'Within',
    });
    for (const stratum of ['block:variety', 'Within'] as const) {
      for (const line of oats.expected.strata[stratum]) expectRow(analysis, stratum, line);
    }
    const blocks = analysis.rows[0]!;
    expectClose(blocks.sumOfSquares, oats.expected.strata.block[0]!.ss, 1e-9);
    expect(blocks).toMatchObject({ term: 'block', df: 5, error: 'block:variety', errorDf: 10 });
    const [plot, residual] = analysis.varianceComponents;
    expectClose(plot?.variance, (6013.305555555573 / 10 - 7968.749999999998 / 45) / 4, 1e-9);
    expectClose(residual?.variance, 7968.749999999998 / 45, 1e-9);
  });

  test('oats: standard errors of differences across strata, with their degrees of freedom', () => {
    const { effects } = analysisOfVarianceWithStrata({
      responses: oats.data.y,
      factors: oatsFactors,
      blocks: [['block']],
      treatments: oatsTerms,
      strata: [{ name: 'main plot', groups: mainPlots }],
      residual: 'sub-plot',
    });
    const { sed } = oats.expected;
    const variety = marginalMeans(effects!.fixed, effects!.model, ['variety']);
    expectClose(variety.differences[0]?.se, sed.variety, 1e-9);
    expect(variety.differences[0]?.df).toBe(10);
    const nitro = marginalMeans(effects!.fixed, effects!.model, ['nitro']);
    expectClose(nitro.differences[2]?.se, sed.nitro, 1e-9);
    expect(nitro.differences[2]?.df).toBe(45);
    nitro.means.forEach((mean, k) => {
      expectClose(mean.estimate, oats.expected.means.nitro[k]!.y, 1e-12);
    });
    const both = marginalMeans(effects!.fixed, effects!.model, ['variety', 'nitro']);
    const sameVariety = both.differences.find(({ a, b }) => a === 0 && b === 1);
    expectClose(sameVariety?.se, sed.nitro_same_variety, 1e-9);
    expectClose(sameVariety?.df, 45, 1e-9);
    const sameNitro = both.differences.find(({ a, b }) => a === 0 && b === 4);
    expectClose(sameNitro?.se, sed.variety_same_or_diff_nitro, 1e-9);
    expectClose(sameNitro?.df, sed.variety_same_nitro_satterthwaite_df, 1e-6);
    // A main plot's mean: var = (MS main + 3 MS sub) / (4 * 6), without the variance between blocks.
    expectClose(
      both.means[0]?.se,
      Math.sqrt((6013.305555555573 / 10 + 3 * (7968.749999999998 / 45)) / 24),
      1e-9,
    );
  });

  test('mint: plants in a pot are no replicates (F 16.69 on 5 and 12, not 31.09 on 5 and 66)', () => {
    const analysis = analysisOfVarianceWithStrata({
      responses: mint.data.y,
      factors: [factorOf('trt', mint.data.trt)],
      blocks: [],
      treatments: [['trt']],
      strata: [{ name: 'unit', groups: groupsOf(mint.data.trt, mint.data.pot) }],
      residual: 'Within',
    });
    for (const line of mint.expected.strata.unit) expectRow(analysis, 'unit', line);
    for (const line of mint.expected.strata.Within) expectRow(analysis, 'Within', line);
    expectClose(analysis.rows[0]?.f, mint.expected.right.F, 1e-9);
    expectClose(analysis.varianceComponents[0]?.variance, mint.expected.varcomp_anova.unit, 1e-9);
    expectClose(analysis.varianceComponents[1]?.variance, mint.expected.varcomp_anova.plant, 1e-9);
    const { means, differences } = marginalMeans(analysis.effects!.fixed, analysis.effects!.model, ['trt']);
    for (const mean of means) {
      expectClose(mean.se, mint.expected.se_mean, 1e-9);
      expectClose(mean.df, 12, 1e-9);
    }
    for (const difference of differences) expectClose(difference.se, mint.expected.sed, 1e-9);
  });

  test('PlantGrowth: a completely randomised design', () => {
    const groups = Object.entries(plantGrowth);
    const analysis = analysisOfVarianceWithStrata({
      responses: groups.flatMap(([, weights]) => weights),
      factors: [
        factorOf(
          'treatment',
          groups.flatMap(([name, weights]) => weights.map(() => name)),
        ),
      ],
      blocks: [],
      treatments: [['treatment']],
      strata: [],
      residual: 'plant',
    });
    // As computed with R 4.2.2; Dobson prints F = 4.846 and p = 0.0159.
    expectRow(analysis, 'plant', {
      term: 'treatment',
      df: 2,
      ss: 3.7663399999999987,
      ms: 1.8831699999999993,
      F: 4.846087862380135,
      p: 0.015909958325622937,
    });
    expectRow(analysis, 'plant', {
      term: 'residual',
      df: 27,
      ss: 10.492089999999997,
      ms: 0.38859592592592584,
    });
    const { means } = marginalMeans(analysis.effects!.fixed, analysis.effects!.model, ['treatment']);
    expectClose(means[0]?.se, 0.1971283657736567, 1e-9);
  });

  test('barley: cultivars in trials as blocks', () => {
    const analysis = analysisOfVarianceWithStrata({
      responses: barley.data.y,
      factors: [factorOf('trial', barley.data.trial), factorOf('variety', barley.data.variety)],
      blocks: [['trial']],
      treatments: [['variety']],
      strata: [],
      residual: 'cell',
    });
    for (const line of barley.expected.anova)
      expectRow(analysis, line.term === 'trial' ? null : 'cell', line);
  });
});

describe('edges', () => {
  const fourByThree = {
    factors: [
      factorOf('block', [1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4]),
      factorOf('cultivar', [...'abcabcabcabc']),
    ],
    blocks: [['block']],
    treatments: [['cultivar']],
    strata: [],
    residual: 'plot',
  };

  test('values that are all alike give no F', () => {
    for (const value of [0, 118, 0.1, 1e12 / 3]) {
      const { rows } = analysisOfVarianceWithStrata({
        ...fourByThree,
        responses: new Array<number>(12).fill(value),
      });
      const cultivar = rows.find((row) => row.term === 'cultivar');
      expect(cultivar).toMatchObject({ f: null, p: null, reason: 'the error is zero to rounding' });
    }
  });

  test('responses that blocks and cultivars make up exactly give no F', () => {
    const responses = [0.1, 0.2, 0.3, 7].flatMap((block) =>
      [1.1, 2.3, 118.7].map((cultivar) => block + cultivar),
    );
    const { rows } = analysisOfVarianceWithStrata({ ...fourByThree, responses });
    expect(rows.find((row) => row.term === 'cultivar')).toMatchObject({
      f: null,
      reason: 'the error is zero to rounding',
    });
  });

  test('one container for each treatment leaves no error: no F, no standard error, and the plants do not help', () => {
    const cultivar = factorOf('cultivar', [...'aaaabbbbcccc']);
    const { rows, effects, varianceComponents } = analysisOfVarianceWithStrata({
      responses: [3, 5, 4, 6, 9, 8, 8, 7, 2, 1, 4, 3],
      factors: [cultivar],
      blocks: [],
      treatments: [['cultivar']],
      strata: [{ name: 'container', groups: cultivar.values }],
      residual: 'plant',
    });
    expect(rows[0]).toMatchObject({
      term: 'cultivar',
      stratum: 'container',
      errorDf: 0,
      f: null,
      p: null,
      reason: 'no degrees of freedom are left for error',
    });
    expect(varianceComponents[0]).toEqual({ term: 'container', variance: null, negative: false });
    const { means, differences } = marginalMeans(effects!.fixed, effects!.model, ['cultivar']);
    expectClose(means[0]?.estimate, 4.5, 1e-14);
    expectClose(differences[0]?.estimate, -3.5, 1e-14);
    expect(means[0]).toMatchObject({
      se: null,
      df: null,
      reason: 'no degrees of freedom are left for error',
    });
    expect(differences[0]).toMatchObject({ se: null, df: null });
  });

  test('a component that comes out negative is given so, and F stays that of the unit', () => {
    const { rows, varianceComponents } = analysisOfVarianceWithStrata({
      responses: [1, 9, 2, 8.5, 3, 7.2, 4, 6, 5, 6.4, 4.4, 7],
      factors: [factorOf('cultivar', [...'aaaaaabbbbbb'])],
      blocks: [],
      treatments: [['cultivar']],
      strata: [{ name: 'pot', groups: [0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5] }],
      residual: 'plant',
    });
    expect(varianceComponents[0]?.negative).toBe(true);
    expect(varianceComponents[0]?.variance).toBeLessThan(0);
    expect(rows[0]?.errorDf).toBe(4);
  });

  test('unequal numbers are called unbalanced', () => {
    const design = { ...fourByThree, responses: [3, 5, 4, 6, 9, 8, 8, 7, 2, 1, 4, 3] };
    expect(analysisOfVarianceWithStrata(design).balanced).toBe(true);
    const short = {
      ...design,
      responses: design.responses.slice(1),
      factors: design.factors.map((factor) => ({ ...factor, values: factor.values.slice(1) })),
    };
    expect(analysisOfVarianceWithStrata(short).balanced).toBe(false);
  });

  test('a factor of a single level keeps its row with the reason', () => {
    const { rows } = analysisOfVarianceWithStrata({
      responses: [1, 2, 4],
      factors: [factorOf('cultivar', ['a', 'a', 'a'])],
      blocks: [],
      treatments: [['cultivar']],
      strata: [],
      residual: 'plant',
    });
    expect(rows.at(-1)).toMatchObject({ term: 'cultivar', df: 0, f: null, reason: 'has a single level' });
  });
});

describe("NIST's one-way analyses of variance", () => {
  // From memory, and F worked out from it: Simon & Lesage's series (1989), NIST Statistical Reference Datasets SmLs01 to SmLs09: nine treatments
  // about 1.4, 1.3, 1.5, 1.3, ... ; the first value of each is its mean, the others lie 0.1 below and above
  // by turns; to all is added 0, a million or a million million. Certified F: 21, 201 and 2001.
  const tenths = [4, 3, 5, 3, 5, 3, 5, 3, 5];
  const cases = [0, 1e6, 1e12].flatMap((offset, k) =>
    [21, 201, 2001].map((replicates, r) => ({
      name: `SmLs0${3 * k + r + 1}`,
      offset,
      replicates,
      digits: [12, 9, 3][k]!,
    })),
  );
  test.each(cases)('$name: F to $digits digits', ({ offset, replicates, digits }) => {
    const whole = String(offset + 1);
    const responses = tenths.flatMap((tenth) =>
      Array.from({ length: replicates }, (_, i) =>
        Number(`${whole}.${i === 0 ? tenth : i % 2 ? tenth - 1 : tenth + 1}`),
      ),
    );
    const treatment = tenths.flatMap((_, t) => new Array<number>(replicates).fill(t));
    const { rows } = analysisOfVarianceWithStrata({
      responses,
      factors: [{ name: 'treatment', levels: 9, values: treatment }],
      blocks: [],
      treatments: [['treatment']],
      strata: [],
      residual: 'observation',
    });
    expectClose(rows[0]?.f, replicates, 10 ** -digits);
    expect(rows[1]?.df).toBe(9 * (replicates - 1));
  });
});
