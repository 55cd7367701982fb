import { describe, expect, test } from 'vitest';
import { marginalMeans } from '../../../src/statistics/linear-model/marginal-means.ts';
import { restrictedMaximumLikelihood } from '../../../src/statistics/linear-model/restricted-maximum-likelihood.ts';
import type { TwoWayCell } from '../../../src/statistics/two-way-table/additive-set.ts';
import {
  type RowMeansWithRandomColumns,
  rowMeansWithRandomColumns,
} from '../../../src/statistics/two-way-table/row-means-with-random-columns.ts';
import barley from '../../published/barley/barley.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';
import { factorOf } from '../../support/factor-of.ts';

const variety = factorOf('variety', barley.data.variety);
const trial = factorOf('trial', barley.data.trial);
const cells: TwoWayCell[] = barley.data.y.map((value, k) => ({
  row: variety.values[k]!,
  column: trial.values[k]!,
  value,
}));

function fitted(table: readonly TwoWayCell[]): RowMeansWithRandomColumns {
  const fit = rowMeansWithRandomColumns(table);
  if ('reason' in fit) throw new Error(fit.reason);
  return fit;
}

describe('the barley trials, trials random', () => {
  test('the whole table: components of the analysis of variance, standard errors with trial variance', () => {
    const fit = fitted(cells);
    const { varcomp_anova: varcomp, emm_kr: means } = barley.expected.mixed_trial_random;
    expectClose(fit.columnVariance, varcomp.trial, 1e-9);
    expectClose(fit.residualVariance, varcomp.residual, 1e-9);
    expect(fit.atZero).toBe(false);
    means.forEach((line, k) => {
      expectClose(fit.means[k]!.estimate, line.emmean, 1e-12);
      expectClose(fit.means[k]!.se, line.SE, 1e-6, 'an optimiser of few digits');
      expectClose(fit.means[k]!.df, line.df, 1e-5, 'Kenward and Roger, the same where balanced');
    });
    for (const difference of fit.differences) {
      expectClose(difference.se, barley.expected.sed, 1e-9);
      expectClose(difference.df, 99, 1e-7);
    }
  });

  test.each([
    { name: 'a fifth missing', table: cells.filter((_, k) => (k * 7 + Math.floor(k / 9)) % 5 !== 0) },
    { name: 'two fifths missing', table: cells.filter((_, k) => (k * 7 + Math.floor(k / 9)) % 5 > 1) },
    {
      name: 'trials that do not differ',
      table: cells.map((cell, k) => ({ ...cell, value: ((k * 37) % 11) + k / 1000 })).slice(3),
    },
  ])('$name: as by the general mixed model', ({ table }) => {
    const fit = fitted(table);
    const general = restrictedMaximumLikelihood({
      responses: table.map(({ value }) => value),
      factors: [{ name: 'row', levels: 10, values: table.map(({ row }) => row) }],
      fixed: [['row']],
      random: [{ name: 'column', groups: table.map(({ column }) => column) }],
      residual: 'cell',
    });
    if ('reason' in general) throw new Error(general.reason);
    const [columns, residual] = general.components;
    expectClose(fit.columnVariance, columns!.variance, 1e-8);
    expectClose(fit.residualVariance, residual!.variance, 1e-8);
    expect(fit.atZero).toBe(columns!.atZero);
    expectClose(fit.logLikelihood, general.logLikelihood, 1e-10);
    const { means, differences } = marginalMeans(general.effects, general.model, ['row']);
    fit.means.forEach((mean, k) => {
      expectClose(mean.estimate, means[k]!.estimate!, 1e-9);
      expectClose(mean.se, means[k]!.se!, 1e-8);
      expectClose(mean.df, means[k]!.df!, 1e-6);
    });
    fit.differences.forEach((difference, k) => {
      expectClose(difference.estimate, differences[k]!.estimate!, 1e-8);
      expectClose(difference.se, differences[k]!.se!, 1e-8);
      expectClose(difference.df, differences[k]!.df!, 1e-6);
    });
  });
});

test('pairs of different linked sets are left out', () => {
  const fit = fitted([
    { row: 0, column: 0, value: 10 },
    { row: 1, column: 0, value: 12 },
    { row: 0, column: 1, value: 20 },
    { row: 1, column: 1, value: 23 },
    { row: 2, column: 2, value: 5 },
    { row: 3, column: 2, value: 9 },
    { row: 2, column: 3, value: 7 },
    { row: 3, column: 3, value: 12 },
  ]);
  expect(fit.differences.map(({ a, b }) => [a, b])).toEqual([
    [0, 1],
    [2, 3],
  ]);
});

test('one trial, or no variation, gives the reason', () => {
  expect(
    rowMeansWithRandomColumns([
      { row: 0, column: 0, value: 1 },
      { row: 1, column: 0, value: 2 },
    ]),
  ).toHaveProperty('reason');
  const flat = [0, 1, 2].flatMap((row) => [0, 1, 2].map((column) => ({ row, column, value: 0.1 })));
  expect(rowMeansWithRandomColumns(flat)).toEqual({ reason: 'the error is zero to rounding' });
});
