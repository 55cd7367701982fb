import { describe, expect, test } from 'vitest';
import { finlayWilkinson } from '../../../src/statistics/two-way-table/finlay-wilkinson.ts';
import { linkedSets } from '../../../src/statistics/two-way-table/linked-sets.ts';
import { shuklaStabilityVariance } from '../../../src/statistics/two-way-table/shukla-stability-variance.ts';
import { twoWayAdditive } from '../../../src/statistics/two-way-table/two-way-additive.ts';
import { wrickeEcovalence } from '../../../src/statistics/two-way-table/wricke-ecovalence.ts';
import barley from '../../published/barley/barley.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';
import { factorOf } from '../../support/factor-of.ts';
import { runR } from '../../support/r.ts';

const variety = factorOf('variety', barley.data.variety);
const trial = factorOf('trial', barley.data.trial);
const cells = barley.data.y.map((value, k) => ({ row: variety.values[k]!, column: trial.values[k]!, value }));

test('the barley trials: slopes, deviations, ecovalences and stability variances as in R', async () => {
  const expected = (await runR(
    `m <- tapply(y, list(row, column), sum); index <- colMeans(m)
     fits <- lapply(seq_len(nrow(m)), function(i) summary(lm(m[i, ] ~ index)))
     w <- rowSums((m - outer(rowMeans(m), colMeans(m), "+") + mean(m))^2); p <- nrow(m); q <- ncol(m)
     # Shukla another way: the variance of a difference between two cultivars is the sum of their variances
     pair <- function(i, j) { d <- m[i, ] - m[j, ]; sum((d - mean(d))^2) / (q - 1) }
     s <- outer(1:p, 1:p, Vectorize(pair))
     shukla <- sapply(1:p, function(i) (sum(s[i, ]) - sum(s[-i, -i]) / 2 / (p - 2)) / (p - 1))
     list(slope = sapply(fits, function(f) f$coefficients[2, 1]), se = sapply(fits, function(f) f$coefficients[2, 2]),
       ms = sapply(fits, function(f) f$sigma^2), w = unname(w), shukla = shukla)`,
    { y: barley.data.y, row: [...variety.values], column: [...trial.values] },
  )) as { slope: number[]; se: number[]; ms: number[]; w: number[]; shukla: number[] };
  const fit = twoWayAdditive(cells);
  const index = fit.sets[0]!.columnMeans;
  const of = (row: number) => cells.map((cell, k) => ({ ...cell, k })).filter((cell) => cell.row === row);
  const ecovalences = variety.labels.map((_, row) =>
    wrickeEcovalence(of(row).map(({ k }) => fit.residuals[k]!)),
  );
  const shukla = shuklaStabilityVariance(ecovalences, 12).values!;
  variety.labels.forEach((_, row) => {
    const line = finlayWilkinson(
      of(row).map(({ value }) => value),
      of(row).map(({ column }) => index[column]!),
    );
    if (line.slope === null) throw new Error(line.reason);
    expectClose(line.slope, expected.slope[row]!, 1e-9);
    expectClose(line.se, expected.se[row]!, 1e-9);
    expectClose(line.deviationMeanSquare, expected.ms[row]!, 1e-9);
    expect(line.df).toBe(10);
    expectClose(ecovalences[row], expected.w[row]!, 1e-9);
    expectClose(shukla[row], expected.shukla[row]!, 1e-9);
  });
  // Together they are the interaction of the analysis of variance; slopes average to 1.
  expectClose(
    ecovalences.reduce((sum, value) => sum + value, 0),
    barley.expected.anova[2]!.ss,
    1e-9,
  );
});

describe('too little to judge', () => {
  test('fewer trials than a slope needs', () => {
    expect(finlayWilkinson([3], [1])).toEqual({
      slope: null,
      reason: 'the cultivar was in fewer than two trials',
    });
    expect(finlayWilkinson([3, 5], [1, 2])).toEqual({ slope: 2, se: null, deviationMeanSquare: null, df: 0 });
    expect(finlayWilkinson([3, 5, 4], [2, 2, 2])).toEqual({
      slope: null,
      reason: 'the trials do not differ',
    });
  });

  test('fewer than three cultivars, or one trial', () => {
    expect(shuklaStabilityVariance([1, 2], 5)).toMatchObject({ values: null });
    expect(shuklaStabilityVariance([1, 2, 3], 1)).toMatchObject({ values: null });
  });
});

test('linked sets follow chains of shared trials', () => {
  const links = linkedSets([
    { row: 5, column: 0 },
    { row: 1, column: 0 },
    { row: 1, column: 1 },
    { row: 3, column: 1 },
    { row: 2, column: 7 },
  ]);
  expect(links).toEqual([
    { rows: [1, 3, 5], columns: [0, 1] },
    { rows: [2], columns: [7] },
  ]);
  expect(linkedSets([])).toEqual([]);
});
