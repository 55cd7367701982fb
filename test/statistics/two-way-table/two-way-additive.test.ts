import { describe, expect, test } from 'vitest';
import type { TwoWayCell } from '../../../src/statistics/two-way-table/additive-set.ts';
import { twoWayAdditive } from '../../../src/statistics/two-way-table/two-way-additive.ts';
import barley from '../../published/barley/barley.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';
import { factorOf } from '../../support/factor-of.ts';
import { runR } from '../../support/r.ts';

const variety = factorOf('variety', barley.data.variety);
const trial = factorOf('trial', barley.data.trial);
const cells: TwoWayCell[] = barley.data.y.map((value, k) => ({
  row: variety.values[k]!,
  column: trial.values[k]!,
  value,
}));
/** A fifth of the cells, spread over the table. */
const holed = cells.filter((_, k) => (k * 7 + Math.floor(k / 9)) % 5 !== 0);

interface InR {
  residual: { df: number; ss: number };
  rows: { ss: number; f: number; p: number };
  columns: { ss: number; f: number; p: number };
  means: { estimate: number; se: number }[];
  differences: { estimate: number; se: number }[];
}

async function inR(table: readonly TwoWayCell[]): Promise<InR> {
  const given = {
    y: table.map(({ value }) => value),
    row: table.map(({ row }) => row),
    column: table.map(({ column }) => column),
    w: table.map(({ weight }) => weight ?? 1),
  };
  return (await runR(
    `row <- factor(row); column <- factor(column)
     contrasts(column) <- contr.sum(nlevels(column))
     fit <- lm(y ~ row + column, weights = w); d <- drop1(fit, test = "F"); v <- nlevels(row)
     L <- cbind(1, rbind(0, diag(v - 1)), matrix(0, v, nlevels(column) - 1))
     of <- function(L) lapply(seq_len(nrow(L)), function(i)
       list(estimate = sum(L[i, ] * coef(fit)), se = sqrt(sum(L[i, ] * (vcov(fit) %*% L[i, ])))))
     line <- function(k) list(ss = d[k, 2], f = d[k, 5], p = d[k, 6])
     pairs <- t(combn(v, 2))
     list(residual = list(df = df.residual(fit), ss = deviance(fit)), rows = line("row"), columns = line("column"),
       means = of(L), differences = of(L[pairs[, 1], ] - L[pairs[, 2], ]))`,
    given,
  )) as unknown as InR;
}

describe('the barley trials', () => {
  test('the whole table: published analysis, means and differences', () => {
    const fit = twoWayAdditive(cells);
    const [trials, varieties, residual] = barley.expected.anova;
    const lines = { columns: trials!, rows: varieties!, residual: residual! };
    for (const row of fit.anova) {
      expect(row.df).toBe(lines[row.term].df);
      expectClose(row.sumOfSquares, lines[row.term].ss, 1e-9);
      if (row.term === 'residual') continue;
      expectClose(row.f, lines[row.term].F!, 1e-9);
      expectClose(row.p, lines[row.term].p!, 1e-8);
    }
    barley.expected.emm_fixed.forEach((line, k) => {
      expect(variety.labels[k]).toBe(line.variety);
      expectClose(fit.means[k]!.estimate, line.emmean, 1e-12);
      expectClose(fit.means[k]!.se, line.SE, 1e-9);
      expect(fit.means[k]).toMatchObject({ df: 99, columns: 12, set: 0 });
    });
    for (const difference of fit.differences) expectClose(difference.se, barley.expected.sed, 1e-9);
    expect(fit.differences.length).toBe(45);
  });

  const weighted = holed.map((cell, k) => ({ ...cell, weight: 0.5 + ((k * 5) % 7) }));
  test.each([
    { name: 'a fifth of the cells missing', table: holed },
    { name: 'a fifth missing, and weights', table: weighted },
  ])('$name: as in R', async ({ table }) => {
    const fit = twoWayAdditive(table);
    const expected = await inR(table);
    expect(fit.residualDf).toBe(expected.residual.df);
    const [columns, rows, residual] = fit.anova;
    expectClose(residual!.sumOfSquares, expected.residual.ss, 1e-9);
    for (const [row, theirs] of [
      [columns!, expected.columns],
      [rows!, expected.rows],
    ] as const) {
      expectClose(row.sumOfSquares, theirs.ss, 1e-9, row.term);
      expectClose(row.f, theirs.f, 1e-9, row.term);
      expectClose(row.p, theirs.p, 1e-8, row.term);
    }
    fit.means.forEach((mean, k) => {
      expectClose(mean.estimate, expected.means[k]!.estimate, 1e-9);
      expectClose(mean.se, expected.means[k]!.se, 1e-9);
    });
    fit.differences.forEach((difference, k) => {
      expectClose(difference.estimate, expected.differences[k]!.estimate, 1e-9);
      expectClose(difference.se, expected.differences[k]!.se, 1e-9);
    });
  });

  test('raw means are misleading where cells are missing: adjusted ones differ from them', () => {
    const fit = twoWayAdditive(holed);
    const raw = (row: number) => {
      const values = holed.filter((cell) => cell.row === row).map(({ value }) => value);
      return values.reduce((sum, value) => sum + value, 0) / values.length;
    };
    expect(Math.max(...fit.means.map(({ row, estimate }) => Math.abs(estimate - raw(row))))).toBeGreaterThan(
      0.5,
    );
  });
});

describe('linked sets', () => {
  const two: TwoWayCell[] = [
    { row: 0, column: 0, value: 10 },
    { row: 1, column: 0, value: 12 },
    { row: 0, column: 1, value: 20 },
    { row: 1, column: 1, value: 23 },
    { row: 2, column: 2, value: 5 },
    { row: 3, column: 2, value: 9 },
    { row: 2, column: 3, value: 7 },
    { row: 3, column: 3, value: 12 },
    { row: 4, column: 4, value: 1 },
  ];

  test('no difference crosses sets, the error is pooled over them', () => {
    const fit = twoWayAdditive(two);
    expect(fit.sets.map(({ rows }) => rows)).toEqual([[0, 1], [2, 3], [4]]);
    expect(fit.differences.map(({ a, b }) => [a, b])).toEqual([
      [0, 1],
      [2, 3],
    ]);
    // Differences 2 and 3 in the first set, 4 and 5 in the second: residuals of 1/4 in each cell.
    expectClose(fit.residualMeanSquare, (8 * 0.25 ** 2) / 2, 1e-12);
    expect(fit.residualDf).toBe(2);
    expectClose(fit.differences[0]!.estimate, -2.5, 1e-14);
    expectClose(fit.differences[1]!.estimate, -4.5, 1e-14);
    expectClose(fit.differences[0]!.se, Math.sqrt(fit.residualMeanSquare!), 1e-12);
    expectClose(fit.means[0]!.estimate, 15, 1e-14);
    expectClose(fit.means[2]!.estimate, 6, 1e-14);
    expectClose(fit.means[4]!.estimate, 1, 1e-14);
  });

  test('the pooled error and F are those of R on the whole table', async () => {
    const fit = twoWayAdditive(two);
    const expected = (await runR(
      `fit <- lm(y ~ factor(column) + factor(row)); c(df.residual(fit), deviance(fit), anova(fit)[2, 1], anova(fit)[2, 2])`,
      {
        y: two.map(({ value }) => value),
        row: two.map(({ row }) => row),
        column: two.map(({ column }) => column),
      },
    )) as number[];
    expect(fit.residualDf).toBe(expected[0]);
    expectClose(fit.anova[2]!.sumOfSquares, expected[1]!, 1e-9);
    expect(fit.anova[1]!.df).toBe(expected[2]);
    expectClose(fit.anova[1]!.sumOfSquares, expected[3]!, 1e-9);
  });
});

describe('edges', () => {
  test('one trial: means, but no error', () => {
    const fit = twoWayAdditive([
      { row: 0, column: 0, value: 3 },
      { row: 1, column: 0, value: 5 },
    ]);
    expect(fit).toMatchObject({
      residualDf: 0,
      residualMeanSquare: null,
      reason: 'no degrees of freedom are left for error',
    });
    expect(fit.differences[0]).toMatchObject({ estimate: -2, se: null, df: null });
    expect(fit.anova[1]).toMatchObject({ f: null, p: null });
  });

  test('an exactly additive table has no error to test against', () => {
    const exact = [0.1, 0.2, 7].flatMap((a, row) =>
      [1.1, 2.3, 100].map((b, column) => ({ row, column, value: a + b })),
    );
    const fit = twoWayAdditive(exact);
    expect(fit.reason).toBe('the error is zero to rounding');
    expect(fit.anova[1]).toMatchObject({ f: null, p: null });
  });

  test('two values in a cell are refused', () => {
    expect(() =>
      twoWayAdditive([
        { row: 0, column: 0, value: 3 },
        { row: 0, column: 0, value: 5 },
      ]),
    ).toThrow('one value in a cell');
  });

  test('200 trials of 40 cultivars within 100 milliseconds', () => {
    const large: TwoWayCell[] = [];
    for (let column = 0; column < 200; column++) {
      for (let row = 0; row < 40; row++)
        large.push({ row, column, value: ((row * 31 + column * 17) % 101) + row });
    }
    twoWayAdditive(large);
    const times = [1, 2, 3].map(() => {
      const start = performance.now();
      twoWayAdditive(large);
      return performance.now() - start;
    });
    expect(Math.min(...times)).toBeLessThan(100);
  });
});
