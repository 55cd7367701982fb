import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compareGroup } from '../../src/compare/compare-group.ts';
import { type SeasonGroup, seasonGroups } from '../../src/compare/season-groups.ts';
import { expectClose } from '../support/close.ts';
import { numbersFromR } from '../support/r.ts';
import { barley, trialsOf } from './barley-trials.ts';

const perPot = seasonGroups(trialsOf(barley, 'Manchuria')).find(({ measure }) => measure === 'per_pot')!;

/** The same cells with a standard error for each trial, as replicated trials would bring. */
const withErrors: SeasonGroup = {
  ...perPot,
  parts: perPot.parts.map((part, column) => ({
    ...part,
    trial: { ...part.trial, replicated: true },
    cells: part.cells.map((cell) => ({ ...cell, se: 1 + column / 4, n: 3 })),
    error: { variance: (1 + column / 4) ** 2, df: 18 },
  })),
};

const expectedPath = new URL('../../../shared/check-values/cultivars-by-trials-barley.json', import.meta.url);

describe('a group of trials', () => {
  test('is plain data, so that it may be written into a page and read there', () => {
    expect(JSON.parse(JSON.stringify(perPot))).toEqual(perPot);
    expect(compareGroup(JSON.parse(JSON.stringify(perPot)) as SeasonGroup)).toEqual(compareGroup(perPot));
  });

  test("weighs by the trials' standard errors as lm does with weights", async () => {
    const found = compareGroup(withErrors, { weighted: true })!;
    const cells = withErrors.parts.flatMap((part) => part.cells);
    const names = [...new Set(cells.map(({ cultivar }) => cultivar))];
    const expected = await numbersFromR(
      `v <- factor(v, levels = n)
       fit <- lm(y ~ v + factor(t), weights = 1 / se^2)
       unname(c(df.residual(fit), deviance(fit), coef(fit)[2:length(n)], coef(summary(fit))[2:length(n), 2]))`,
      {
        y: cells.map(({ mean }) => mean),
        v: cells.map(({ cultivar }) => cultivar),
        t: cells.map(({ trial }) => trial),
        se: cells.map(({ se }) => se!),
        n: names,
      },
    );
    expect(found.anova[2]!.df).toBe(expected[0]);
    expectClose(found.anova[2]!.sum_of_squares, expected[1]!, 1e-9);
    const [first, ...others] = names;
    others.forEach((name, index) => {
      const pair = found.differences.find(({ a, b }) => [a, b].includes(name) && [a, b].includes(first!))!;
      expectClose(pair.estimate * (pair.a === name ? 1 : -1), expected[2 + index]!, 1e-9);
      expectClose(pair.se, expected[2 + others.length + index]!, 1e-9);
    });
  });

  test('leaves out of a weighted comparison what has no standard error', () => {
    expect(compareGroup(perPot, { weighted: true })).toBeNull();
  });

  test('holds cultivar x trial against the pooled error of the trials', async () => {
    const found = compareGroup(withErrors)!.interaction!;
    const pooled =
      withErrors.parts.reduce((total, { error }) => total + error!.variance, 0) / withErrors.parts.length;
    const residual = compareGroup(perPot)!.anova[2]!;
    expectClose(found.f, residual.mean_square! / pooled, 1e-12);
    expect(found).toMatchObject({ df: 99, error_df: 12 * 18, trials: 12 });
    const [p] = await numbersFromR('pf(f, 99, 216, lower.tail = FALSE)', { f: found.f! });
    expectClose(found.p, p!, 1e-8);
    expect(compareGroup(perPot)!.interaction).toBeNull();
  });

  test('takes the interaction from the replicated trials alone where some are not', () => {
    const mixed = { ...withErrors, parts: [...withErrors.parts.slice(0, 3), ...perPot.parts.slice(3)] };
    const three = compareGroup({ ...withErrors, parts: withErrors.parts.slice(0, 3) })!;
    expect(compareGroup(mixed)!.interaction).toEqual(three.interaction);
    expect(three.interaction).toMatchObject({ trials: 3, df: 18 });
  });

  test.skipIf(!existsSync(expectedPath))('gives means with trials as a sample as lme4 does', () => {
    const { expected } = JSON.parse(readFileSync(expectedPath, 'utf8')) as {
      expected: {
        mixed_trial_random: { emm_kr: { variety: string; emmean: number; SE: number; df: number }[] };
      };
    };
    const found = compareGroup(perPot)!.random_trials;
    for (const { variety, emmean, SE, df } of expected.mixed_trial_random.emm_kr) {
      const mean = found.find(({ cultivar }) => cultivar === variety)!;
      expectClose(mean.mean, emmean, 1e-9);
      // lme4's optimiser stops at about 1e-7 of its own optimum.
      expectClose(mean.se, SE, 1e-6);
      expectClose(mean.df, df, 1e-4);
    }
    expect(compareGroup(perPot, { randomTrials: false })!.random_trials).toEqual([]);
  });

  test('counts wins and losses against the check of each trial', () => {
    const trebi = compareGroup(perPot)!.stability.find(({ cultivar }) => cultivar === 'Trebi')!;
    const better = [...Map.groupBy(barley, ({ trial }) => trial).values()].filter((cells) => {
      const of = (name: string) => cells.find(({ variety }) => variety === name)!.y;
      return of('Trebi') > of('Manchuria');
    }).length;
    expect(trebi).toMatchObject({ wins: better, losses: 12 - better });
  });

  test('by some trials and cultivars is the same as if there were no others', () => {
    const trials = perPot.parts.slice(0, 4).map(({ trial }) => trial.id);
    const cultivars = ['Trebi', 'Velvet', 'Glabron'];
    const kept = trialsOf(
      barley.filter(({ trial, variety }) => trials.includes(trial) && cultivars.includes(variety)),
      'Manchuria',
    );
    const few = compareGroup(seasonGroups(kept).find(({ measure }) => measure === 'per_pot')!)!;
    const found = compareGroup(perPot, { trials, cultivars })!;
    expect(found.adjusted_means).toEqual(few.adjusted_means);
    expect(found.stability.map(({ ecovalence }) => ecovalence)).toEqual(
      few.stability.map(({ ecovalence }) => ecovalence),
    );
  });

  test('without variation is refused in words of its own', () => {
    const alike = barley.map((cell) => ({ ...cell, y: cell.variety.length + cell.trial.length }));
    const group = seasonGroups(trialsOf(alike)).find(({ measure }) => measure === 'per_pot')!;
    const found = compareGroup(group)!;
    expect(found.verdict).toBe('not compared');
    expect(found.reason).toContain('exactly as much in every trial');
    expect(found.differences.every(({ se, p_adjusted }) => se === null && p_adjusted === null)).toBe(true);
  });
});
