import { describe, expect, test } from 'vitest';
import { analysisOfVarianceTypeThree } from '../../../src/statistics/linear-model/analysis-of-variance-type-three.ts';
import { analysisOfVarianceWithStrata } from '../../../src/statistics/linear-model/analysis-of-variance-with-strata.ts';
import { leastSquares } from '../../../src/statistics/linear-model/least-squares.ts';
import { marginalMeans } from '../../../src/statistics/linear-model/marginal-means.ts';
import { type Covariate, type Factor, modelTerms } from '../../../src/statistics/linear-model/model-terms.ts';
import { expectClose } from '../../support/close.ts';
import { factorOf } from '../../support/factor-of.ts';
import { numberFromR, runR } from '../../support/r.ts';

interface InR {
  ss: Record<string, number>;
  df: Record<string, number>;
  f: Record<string, number>;
  p: Record<string, number>;
  residual: { df: number; ss: number };
  means: { estimate: number; se: number }[];
  differences: { estimate: number; se: number }[];
  leverages: number[];
  residuals: number[];
}

/** The same in R: lm with sum contrasts, each term dropped from it, means by predicted cells averaged. */
async function inR(
  y: number[],
  factors: readonly Factor[],
  terms: readonly string[][],
  of: string,
  covariates: readonly Covariate[] = [],
  weights: number[] = y.map(() => 1),
): Promise<InR> {
  const given: Record<string, number[]> = { y, w: weights };
  for (const { name, values } of [...factors, ...covariates]) given[name] = [...values];
  const code = `
    ${factors.map(({ name }) => `${name} <- factor(${name}); contrasts(${name}) <- contr.sum(nlevels(${name}))`).join('\n')}
    fit <- lm(y ~ ${terms.map((names) => names.join(':')).join(' + ')}, weights = w)
    d <- drop1(fit, . ~ ., test = "F"); d <- d[-1, ]
    named <- function(column) setNames(as.list(d[[column]]), gsub(" ", "", rownames(d)))
    grid <- expand.grid(${factors.map(({ name }) => `${name} = levels(${name})`).join(', ')})
    ${covariates.map(({ name }) => `grid$${name} <- mean(${name})`).join('\n')}
    ${factors.map(({ name }) => `grid$${name} <- factor(grid$${name}, levels(${name})); contrasts(grid$${name}) <- contr.sum(nlevels(${name}))`).join('\n')}
    X <- model.matrix(delete.response(terms(fit)), grid)
    L <- t(sapply(levels(${of}), function(level) colMeans(X[grid$${of} == level, , drop = FALSE])))
    of <- function(L) lapply(seq_len(nrow(L)), function(i)
      list(estimate = sum(L[i, ] * coef(fit)), se = sqrt(sum(L[i, ] * (vcov(fit) %*% L[i, ])))))
    pairs <- t(combn(nrow(L), 2))
    list(ss = named("Sum of Sq"), df = named("Df"), f = named("F value"), p = named("Pr(>F)"),
      residual = list(df = df.residual(fit), ss = deviance(fit)),
      means = of(L), differences = of(L[pairs[, 1], , drop = FALSE] - L[pairs[, 2], , drop = FALSE]),
      leverages = unname(hatvalues(fit)), residuals = unname(residuals(fit)))`;
  return (await runR(code, given)) as unknown as InR;
}

const keep = <T>(values: readonly T[], without: readonly number[]) =>
  values.filter((_, i) => !without.includes(i));
const y24 = [
  49.5, 62.8, 46.8, 57, 59.8, 58.5, 55.5, 56, 62.8, 55.8, 69.5, 55, 62, 48.8, 45.5, 44.2, 52, 51.5, 49.8,
  48.8, 57.2, 59, 53.2, 56,
];

interface Case {
  name: string;
  y: number[];
  factors: Factor[];
  terms: string[][];
  of: string;
  covariates?: Covariate[];
  weights?: number[];
}

const range = (n: number) => Array.from({ length: n }, (_, i) => i);
const missing = [0, 5, 9, 10, 19];
const left = keep(range(24), missing);
const square = keep(range(16), [2, 7]);
const cases: Case[] = [
  {
    name: 'one way, unequal numbers, one value in a group',
    y: y24.slice(0, 11),
    factors: [factorOf('a', [...'uuuuvvvwwwx'])],
    terms: [['a']],
    of: 'a',
  },
  {
    name: 'blocks with plots missing',
    y: keep(y24, missing),
    factors: [
      factorOf(
        'block',
        left.map((i) => i % 4),
      ),
      factorOf(
        'cultivar',
        left.map((i) => Math.floor(i / 4)),
      ),
    ],
    terms: [['block'], ['cultivar']],
    of: 'cultivar',
  },
  {
    name: 'a Latin square with plots missing',
    y: keep(y24.slice(0, 16), [2, 7]),
    factors: [
      factorOf(
        'row',
        square.map((i) => Math.floor(i / 4)),
      ),
      factorOf(
        'column',
        square.map((i) => i % 4),
      ),
      factorOf(
        'a',
        square.map((i) => ((i % 4) + Math.floor(i / 4)) % 4),
      ),
    ],
    terms: [['row'], ['column'], ['a']],
    of: 'a',
  },
  {
    name: 'a factorial of unequal numbers',
    y: keep(y24, missing),
    factors: [
      factorOf(
        'a',
        left.map((i) => i % 2),
      ),
      factorOf(
        'b',
        left.map((i) => Math.floor(i / 2) % 3),
      ),
    ],
    terms: [['a'], ['b'], ['a', 'b']],
    of: 'b',
  },
  {
    name: 'a factorial in blocks with plots missing',
    y: keep(y24, missing),
    factors: [
      factorOf(
        'block',
        left.map((i) => Math.floor(i / 6)),
      ),
      factorOf(
        'a',
        left.map((i) => i % 2),
      ),
      factorOf(
        'b',
        left.map((i) => Math.floor(i / 2) % 3),
      ),
    ],
    terms: [['block'], ['a'], ['b'], ['a', 'b']],
    of: 'a',
  },
  {
    name: 'slopes along rows and columns beside treatments',
    y: keep(y24, missing),
    factors: [
      factorOf(
        'a',
        left.map((i) => (i * 7) % 3),
      ),
    ],
    terms: [['a'], ['row'], ['column']],
    of: 'a',
    covariates: [
      { name: 'row', values: left.map((i) => Math.floor(i / 6) + 1) },
      { name: 'column', values: left.map((i) => (i % 6) + 1) },
    ],
  },
  {
    name: 'weights',
    y: keep(y24, missing),
    factors: [
      factorOf(
        'block',
        left.map((i) => i % 4),
      ),
      factorOf(
        'cultivar',
        left.map((i) => Math.floor(i / 4)),
      ),
    ],
    terms: [['block'], ['cultivar']],
    of: 'cultivar',
    weights: left.map((i) => 1 + (i % 5)),
  },
];

describe('unbalanced fixed models against R', () => {
  test.each(cases)('$name', async ({ y, factors, terms, of, covariates, weights }) => {
    const model = modelTerms(y.length, factors, terms, covariates);
    const analysis = analysisOfVarianceTypeThree(model, y, weights);
    const expected = await inR(y, factors, terms, of, covariates, weights);
    for (const row of analysis.rows) {
      expect(row.df, row.term).toBe(expected.df[row.term]);
      expectClose(row.sumOfSquares, expected.ss[row.term]!, 1e-9, `sum of squares of ${row.term}`);
      expectClose(row.f, expected.f[row.term]!, 1e-9, `F of ${row.term}`);
      expectClose(row.p, expected.p[row.term]!, 1e-8, `p of ${row.term}`);
      expect(row.errorDf).toBe(expected.residual.df);
    }
    expect(analysis.residual.df).toBe(expected.residual.df);
    expectClose(analysis.residual.sumOfSquares, expected.residual.ss, 1e-9);
    const { means, differences } = marginalMeans(analysis.fit, model, [of]);
    means.forEach((mean, k) => {
      expectClose(mean.estimate, expected.means[k]!.estimate, 1e-9);
      expectClose(mean.se, expected.means[k]!.se, 1e-9);
      expect(mean.df).toBe(expected.residual.df);
    });
    differences.forEach((difference, k) => {
      expectClose(difference.estimate, expected.differences[k]!.estimate, 1e-9);
      expectClose(difference.se, expected.differences[k]!.se, 1e-9);
    });
    analysis.fit.leverages.forEach((value, i) => {
      expectClose(value, expected.leverages[i]!, 1e-9);
    });
    analysis.fit.residuals.forEach((value, i) => {
      expectClose(value + 1, expected.residuals[i]! + 1, 1e-9);
    });
  });

  test('treatment contrasts or sequential sums would answer another question', async () => {
    const { y, factors, terms } = cases[3]!;
    const rows = analysisOfVarianceTypeThree(modelTerms(y.length, factors, terms), y).rows;
    const given = { y, a: [...factors[0]!.values], b: [...factors[1]!.values] };
    const treatment = await numberFromR(
      'a <- factor(a); b <- factor(b); drop1(lm(y ~ a * b), . ~ ., test = "F")["a", 5]',
      given,
    );
    const sequential = await numberFromR('anova(lm(y ~ factor(a) * factor(b)))[1, 4]', given);
    expect(Math.abs(rows[0]!.f! / treatment - 1)).toBeGreaterThan(0.01);
    expect(Math.abs(rows[0]!.f! / sequential - 1)).toBeGreaterThan(0.01);
  });
});

describe('what cannot be estimated', () => {
  test('an empty combination: main effects are not tested, the interaction on what is left', async () => {
    const a = factorOf(
      'a',
      range(12).map((i) => i % 2),
    );
    const b = factorOf(
      'b',
      range(12).map((i) => Math.floor(i / 2) % 3),
    );
    const full = { y: y24.slice(0, 12), a: [...a.values], b: [...b.values] };
    const present = range(12).filter((i) => !(full.a[i] === 1 && full.b[i] === 2));
    const pick = (values: readonly number[]) => present.map((i) => values[i]!);
    const model = modelTerms(
      present.length,
      [
        { ...a, values: pick(a.values) },
        { ...b, values: pick(b.values) },
      ],
      [['a'], ['b'], ['a', 'b']],
    );
    const y = pick(full.y);
    const { rows, fit } = analysisOfVarianceTypeThree(model, y);
    expect(rows[0]).toMatchObject({
      f: null,
      p: null,
      sumOfSquares: null,
      reason: expect.stringMatching(/combinations are missing/) as string,
    });
    expect(rows[1]).toMatchObject({ f: null, p: null, sumOfSquares: null });
    const expected = (await runR(
      'f <- anova(lm(y ~ factor(a) + factor(b)), lm(y ~ factor(a) * factor(b))); list(df = f[2, 3], f = f[2, 5], p = f[2, 6])',
      {
        y,
        a: pick(a.values),
        b: pick(b.values),
      },
    )) as { df: number; f: number; p: number };
    expect(rows[2]!.df).toBe(expected.df);
    expectClose(rows[2]!.f, expected.f, 1e-9);
    expectClose(rows[2]!.p, expected.p, 1e-8);
    expect(rows[2]!.reason).toBe('tested on 1 of 2 degrees of freedom: combinations are missing');
    const cells = marginalMeans(fit, model, ['a', 'b']).means;
    expect(cells.filter(({ estimate }) => estimate === null).map(({ levels }) => levels)).toEqual([[1, 2]]);
    const overA = marginalMeans(fit, model, ['a']).means;
    expect(overA.map(({ estimate }) => estimate === null)).toEqual([false, true]);
  });

  test('a cultivar that shares no block with the others', () => {
    const model = modelTerms(
      6,
      [factorOf('block', [1, 1, 2, 2, 3, 3]), factorOf('cultivar', [...'ababcc'])],
      [['block'], ['cultivar']],
    );
    const { rows, fit } = analysisOfVarianceTypeThree(model, [3, 5, 4, 6.5, 8, 8.2]);
    expect(rows[1]).toMatchObject({
      df: 1,
      reason: 'tested on 1 of 2 degrees of freedom: combinations are missing',
    });
    const { differences } = marginalMeans(fit, model, ['cultivar']);
    expectClose(differences[0]!.estimate, -2.25, 1e-12);
    expect(differences[1]).toMatchObject({
      estimate: null,
      se: null,
      reason: 'not estimable: combinations are missing',
    });
  });

  test('no degrees of freedom for error: sums of squares and means, no F, no standard error', () => {
    const model = modelTerms(4, [factorOf('a', [...'uvwx'])], [['a']]);
    const { rows, residual, fit } = analysisOfVarianceTypeThree(model, [1, 2, 4, 9]);
    expectClose(rows[0]!.sumOfSquares, 38, 1e-12);
    expect(rows[0]).toMatchObject({
      df: 3,
      f: null,
      p: null,
      reason: 'no degrees of freedom are left for error',
    });
    expect(residual).toMatchObject({ df: 0, meanSquare: null });
    const { means } = marginalMeans(fit, model, ['a']);
    expectClose(means[3]!.estimate, 9, 1e-14);
    expect(means[3]).toMatchObject({ se: null, df: null });
    for (const leverage of fit.leverages) expectClose(leverage, 1, 1e-14);
  });

  test('values all alike, near zero or far from it', () => {
    const model = modelTerms(6, [factorOf('a', [...'uuvvww'])], [['a']]);
    for (const value of [0, 0.1, 118, 1e9 / 7]) {
      const { rows, fit } = analysisOfVarianceTypeThree(model, new Array<number>(6).fill(value));
      expect(rows[0]).toMatchObject({ f: null, p: null, reason: 'the error is zero to rounding' });
      expect(marginalMeans(fit, model, ['a']).means[0]).toMatchObject({ se: null });
    }
  });

  test("a wrong number of responses or a weight of 0 is a programmer's error", () => {
    const model = modelTerms(3, [factorOf('a', [...'uvv'])], [['a']]);
    expect(() => leastSquares(model.matrix, [1, 2])).toThrow('leastSquares requires 3 responses, not 2');
    expect(() => leastSquares(model.matrix, [1, 2, 3], [1, 0, 1])).toThrow('weights above 0');
    expect(() => modelTerms(3, [factorOf('a', [...'uvv'])], [['b']])).toThrow('b is no factor or covariate');
  });
});

test('a balanced design has the same analysis by both ways', () => {
  const factors = [
    factorOf(
      'block',
      range(24).map((i) => Math.floor(i / 6)),
    ),
    factorOf(
      'a',
      range(24).map((i) => i % 2),
    ),
    factorOf(
      'b',
      range(24).map((i) => Math.floor(i / 2) % 3),
    ),
  ];
  const treatments = [['a'], ['b'], ['a', 'b']];
  const strata = analysisOfVarianceWithStrata({
    responses: y24,
    factors,
    blocks: [['block']],
    treatments,
    strata: [],
    residual: 'plot',
  });
  const typeThree = analysisOfVarianceTypeThree(modelTerms(24, factors, [['block'], ...treatments]), y24);
  for (const row of typeThree.rows) {
    const same = strata.rows.find(({ term }) => term === row.term)!;
    expectClose(row.f, same.f!, 1e-11, row.term);
    expectClose(row.sumOfSquares, same.sumOfSquares!, 1e-11, row.term);
  }
});
