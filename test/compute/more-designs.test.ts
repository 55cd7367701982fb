import { describe as suite, expect, test } from 'vitest';
import { computeFindings } from '../../src/compute/findings.ts';
import { siteFindings } from '../../src/compute/site-findings.ts';
import { checksTable } from '../../src/compute/tables/inference/checks-table.ts';
import type { Inference } from '../../src/model/findings.ts';
import type { Trial } from '../../src/model/trial.ts';
import { expectClose } from '../support/close.ts';
import { numbersFromR } from '../support/r.ts';
import { type PlantOfTrial, trialOf } from '../support/trial-of.ts';
import { mint, plantGrowth } from './published.ts';

function entry(trial: Trial, measure: Inference['measure'] = 'per_plant_set'): Inference {
  return computeFindings(trial).inference.find((each) => each.measure === measure && each.cut === 'all')!;
}

const row = (inference: Inference, term: string) => inference.anova.find((each) => each.term === term)!;

/** Made-up weights that look like lettuces: nothing depends on their source. */
const weights = [131, 150, 145, 122, 149, 139, 140, 171, 150, 128, 147, 152, 160, 118, 133, 141];

suite('a Latin square', () => {
  const letters = ['abcd', 'bcda', 'cdab', 'dabc'];
  const plants = letters.flatMap((line, i) =>
    [...line].map((level, j): PlantOfTrial => ({
      container: 'B1',
      row: i + 1,
      column: j + 1,
      treatment: { cultivar: level },
      weight: weights[4 * i + j]!,
    })),
  );
  const design = { arrangement: 'latin square', allotted: 'position', randomised: true } as const;

  test('rows and columns are fitted first: F is that of aov', async () => {
    const inference = entry(trialOf(plants, { design }));
    const [f, p, rows] = await numbersFromR(
      'a <- anova(lm(y ~ factor(r) + factor(k) + factor(t))); c(a[3, 4], a[3, 5], a[1, 2])',
      {
        y: plants.map(({ weight }) => weight!),
        r: plants.map(({ row: at }) => at!),
        k: plants.map(({ column }) => column!),
        t: plants.map(({ treatment }) => treatment['cultivar']!),
      },
    );
    expect(row(inference, 'cultivar')).toMatchObject({ df: 3, error_df: 6 });
    expectClose(row(inference, 'cultivar').f!, f!, 1e-9);
    expectClose(row(inference, 'cultivar').p!, p!, 1e-8);
    expectClose(row(inference, 'row').sum_of_squares!, rows!, 1e-9);
    // A square's rows and columns can be set in 4! x 4! orders.
    expect(inference.randomisation_test).toMatchObject({ exact: true, arrangements: 576 });
    // In 32 of them the square is itself again: see the randomisation tests of Latin squares.
    expect(inference.randomisation_test!.least_p).toBe(32 / 576);
    const note =
      'The lots of this design could fall in so few ways that the p of the randomisation test cannot be less than 0.056, however far apart the treatments are: at the 0.05 level this test cannot show a difference.';
    expect(inference.randomisation_test!.note).toBe(note);
    expect(checksTable(inference)!.notes).toContain(note);
  });

  test('with a plot missing it is least squares, Type III', async () => {
    const lost = plants.map((plant, index) => (index === 5 ? { ...plant, weight: null } : plant));
    const inference = entry(trialOf(lost, { design }));
    const kept = lost.filter(({ weight }) => weight !== null);
    const [f] = await numbersFromR("drop1(lm(y ~ factor(r) + factor(k) + factor(t)), test = 'F')[4, 5]", {
      y: kept.map(({ weight }) => weight!),
      r: kept.map(({ row: at }) => at!),
      k: kept.map(({ column }) => column!),
      t: kept.map(({ treatment }) => treatment['cultivar']!),
    });
    expectClose(row(inference, 'cultivar').f!, f!, 1e-9);
    expect(row(inference, 'cultivar').error_df).toBe(5);
  });
});

suite('a factorial of unequal numbers', () => {
  test('is of Type III with sum-to-zero contrasts, whatever the order of the factors', async () => {
    const plants = weights.slice(0, 14).map((weight, index): PlantOfTrial => ({
      container: 'B1',
      treatment: { strength: index % 2 === 0 ? '1' : '2', cultivar: ['a', 'b', 'c', 'a', 'c'][index % 5]! },
      weight,
    }));
    const inference = entry(trialOf(plants));
    const [fStrength, fCultivar, fBoth] = await numbersFromR(
      `s <- factor(s); t <- factor(t)
       d <- drop1(lm(y ~ s * t, contrasts = list(s = 'contr.sum', t = 'contr.sum')), . ~ ., test = 'F')
       d[2:4, 'F value']`,
      {
        y: plants.map(({ weight }) => weight!),
        s: plants.map(({ treatment }) => treatment['strength']!),
        t: plants.map(({ treatment }) => treatment['cultivar']!),
      },
    );
    expectClose(row(inference, 'strength').f!, fStrength!, 1e-9);
    expectClose(row(inference, 'cultivar').f!, fCultivar!, 1e-9);
    expectClose(row(inference, 'strength:cultivar').f!, fBoth!, 1e-9);
  });
});

suite('a factorial with a combination never grown', () => {
  const combinations = [
    ['1', 'a'],
    ['1', 'b'],
    ['2', 'a'],
    ['2', 'b'],
    ['3', 'a'],
  ] as const;
  const plants = weights.slice(0, 15).map((weight, index): PlantOfTrial => {
    const [strength, cultivar] = combinations[index % 5]!;
    return { container: 'B1', treatment: { strength, cultivar }, weight };
  });
  const inference = entry(trialOf(plants));
  const words =
    'Not every combination of strength with the other factors was grown or weighed, so no F tells whether strength makes a difference over all its levels. Only levels that had every combination are compared.';

  test('has no F of its factors, and says why', () => {
    expect(row(inference, 'strength')).toMatchObject({ f: null, p: null, reason: words });
    expect(inference.reason).toContain(words);
  });

  test('leaves unknown what no level had every combination for', () => {
    const grown = ['1a', '1b', '2a', '2b', '3b', '4a'];
    const more = Array.from({ length: 18 }, (_, index): PlantOfTrial => {
      const [strength, cultivar] = grown[index % 6]!;
      return {
        container: 'B1',
        treatment: { strength: strength!, cultivar: cultivar! },
        weight: weights[index % 16]! + index,
      };
    });
    const { means } = entry(trialOf(more));
    const ofCultivar = means.filter(({ treatment }) => !('strength' in treatment));
    expect(ofCultivar.map(({ mean, se, letters }) => [mean, se, letters])).toEqual([
      [null, null, null],
      [null, null, null],
    ]);
  });

  test('compares those levels that had every combination, by the means of their cells', async () => {
    const [mean, se, difference, seOfDifference, p] = await numbersFromR(
      `fit <- lm(y ~ 0 + factor(paste(s, k)))
       along <- function(l) c(sum(l * coef(fit)), sqrt(sum(l * (vcov(fit) %*% l))))
       one <- along(c(.5, .5, 0, 0, 0))
       two <- along(c(.5, .5, -.5, -.5, 0))
       c(one, two, 2 * pt(-abs(two[1] / two[2]), df.residual(fit)))`,
      {
        y: plants.map(({ weight }) => weight!),
        s: plants.map(({ treatment }) => treatment['strength']!),
        k: plants.map(({ treatment }) => treatment['cultivar']!),
      },
    );
    const ofStrength = inference.means.filter(({ treatment }) => !('cultivar' in treatment));
    expect(ofStrength.map(({ treatment }) => treatment['strength'])).toEqual(['1', '2', '3']);
    expectClose(ofStrength[0]!.mean!, mean!, 1e-9);
    expectClose(ofStrength[0]!.se!, se!, 1e-9);
    expect(ofStrength[2]).toMatchObject({ mean: null, se: null });
    const pairs = inference.differences.filter(({ a }) => !('cultivar' in a));
    expect(pairs).toHaveLength(3);
    expectClose(pairs[0]!.estimate!, difference!, 1e-9);
    expectClose(pairs[0]!.se!, seOfDifference!, 1e-9);
    // Two levels are left, so the studentized range is that of one pair: Student's t.
    expectClose(pairs[0]!.p_adjusted!, p!, 1e-8);
    expect(pairs[1]).toMatchObject({ estimate: null, p_adjusted: null });
  });
});

suite('a check of which nothing lived', () => {
  const plants = [1, 2, 3, 4].flatMap((block) =>
    ['a', 'b', 'c'].map((cultivar, c): PlantOfTrial => ({
      container: `T${block}`,
      block: String(block),
      treatment: { cultivar },
      ...(cultivar === 'a'
        ? { weight: null, status: 'dead' as const }
        : { weight: weights[3 * block + c]! + 0.1 * c }),
    })),
  );
  const inference = entry(
    trialOf(plants, {
      check: { cultivar: 'a' },
      design: { arrangement: 'randomised blocks', allotted: 'position', randomised: true },
    }),
  );

  test('has the mean 0, not the rounding of it, and nothing is in percent of it', () => {
    expect(inference.means.find(({ treatment }) => treatment['cultivar'] === 'a')!.mean).toBe(0);
    expect(inference.against_check.map(({ percent_of_check: percent }) => percent)).toEqual([null, null]);
  });
});

suite('comparisons with a check that are related in no simple way', () => {
  // Blocks that hold the check and some of the other cultivars.
  const inBlocks = (blocks: readonly (readonly string[])[]) =>
    blocks.flatMap((levels, b) =>
      levels.map((cultivar, index): PlantOfTrial => ({
        container: `T${b + 1}`,
        block: String(b + 1),
        treatment: { cultivar },
        weight: weights[(4 * b + index) % 16]! + 2 * b,
      })),
    );
  const few = [
    ['check', 'a', 'b', 'c'],
    ['check', 'a', 'd', 'b'],
    ['check', 'c', 'd', 'e'],
  ];
  const many = [
    ['check', ...'abcdefghi'],
    ['check', ...'efghijklm'],
    ['check', ...'abcdjklm'],
  ];

  test('rest on no seed, and more than twelve publish that of their directions', () => {
    const found = entry(trialOf(inBlocks(few), { check: { cultivar: 'check' } }));
    expect(found.against_check).toHaveLength(5);
    expect(found.against_check.every(({ p_adjusted: p }) => p !== null && p > 0)).toBe(true);
    expect(found).not.toHaveProperty('against_check_seed');
    const large = entry(trialOf(inBlocks(many), { check: { cultivar: 'check' } }));
    expect(large.against_check).toHaveLength(13);
    expect(large.against_check_seed).toBe(1955);
    expect(entry(plantGrowth()).against_check.length).toBeGreaterThan(0);
    expect(entry(plantGrowth())).not.toHaveProperty('against_check_seed');
  });
});

suite('containers as units, plants within', () => {
  const plants = ['a', 'a', 'a', 'b', 'b', 'b'].flatMap((level, tank) =>
    [0, 1, 2, 3].map((index): PlantOfTrial => ({
      container: `T${tank + 1}`,
      treatment: { cultivar: level },
      weight: weights[(4 * tank + index) % 16]! + 3 * tank,
    })),
  );

  test('F is that of the containers', async () => {
    const inference = entry(trialOf(plants));
    const [f] = await numbersFromR('unname(summary(aov(y ~ t + Error(u)))[[1]][[1]][1, 4])', {
      y: plants.map(({ weight }) => weight!),
      t: plants.map(({ treatment }) => treatment['cultivar']!),
      u: plants.map(({ container }) => container),
    });
    expectClose(row(inference, 'cultivar').f!, f!, 1e-9);
    expect(row(inference, 'cultivar')).toMatchObject({ error: 'container', error_df: 4 });
    expect(inference.units[0]).toEqual({
      factor: 'cultivar',
      experimental_unit: 'container',
      replicates: { a: 3, b: 3 },
    });
    // 6! / (3! 3!) ways to give three tanks of six to one cultivar.
    expect(inference.randomisation_test).toMatchObject({ exact: true, arrangements: 20, least_p: 2 / 20 });
    expect(inference.randomisation_test!.note).toMatch(/cannot be less than 0\.100,/);
  });

  test('how many plants are worth weighing follows from the components', () => {
    const { plants_per_unit: worth } = entry(trialOf(plants));
    expect(worth!.weighed).toBe(4);
    expectClose(worth!.gain.find((each) => each.plants === 4)!.variance_percent!, 100, 1e-12);
    expect(worth!.gain[0]!.variance_percent!).toBeGreaterThanOrEqual(100);
  });
});

suite('one tank for each strength, pots of every cultivar within', () => {
  /** Spread grows with the mean; the first pot of the first tank is lost where it is said so. */
  const tanks = (lost: boolean) =>
    entry(
      trialOf(
        Array.from({ length: 36 }, (_, index): PlantOfTrial => {
          const [tank, pot] = [Math.floor(index / 12), index % 12];
          const noise = Math.sin(12.9898 * index + index * index);
          return {
            container: `T${tank}`,
            treatment: { strength: 'abc'[tank]!, cultivar: pot % 2 === 0 ? 'x' : 'y' },
            ...(lost && index === 0
              ? { weight: null, status: 'culled' as const }
              : { weight: Math.round(Math.exp(3 + 1.5 * tank + 0.5 * (pot % 2) + 0.4 * noise)) }),
          };
        }),
        { design: { arrangement: 'split plot', allotted: 'position', randomised: true } },
      ),
    );

  test.each([false, true])('strength is tested on no scale (a pot lost: %s)', (lost) => {
    const { anova, transformed, verdict } = tanks(lost);
    expect(verdict).toBe('tested');
    expect(anova.find(({ term }) => term === 'strength')).toMatchObject({ f: null, p: null });
    expect(transformed!.terms.find(({ term }) => term === 'strength')).toEqual({
      term: 'strength',
      f: null,
      p: null,
    });
    expect(transformed!.terms.find(({ term }) => term === 'cultivar')!.p).not.toBeNull();
    const ofStrength = transformed!.means.filter(({ treatment }) => 'strength' in treatment);
    expect(ofStrength.map(({ lower, upper }) => [lower, upper])).toEqual(ofStrength.map(() => [null, null]));
  });
});

suite('the next trial of a split plot', () => {
  test('is reckoned for what was allotted to the finest units, and says so', () => {
    const fromOf = (trial: Trial) => computeFindings(trial).next_trial[0]!.from;
    const pots = Array.from({ length: 24 }, (_, index): PlantOfTrial => {
      const tank = Math.floor(index / 6);
      return {
        container: `T${tank}`,
        treatment: { strength: tank % 2 === 0 ? 'half' : 'full', cultivar: 'abc'[index % 3]! },
        weight: 80 + 7 * tank + ((index * 37) % 11),
      };
    });
    const design = { arrangement: 'split plot', allotted: 'position', randomised: true } as const;
    expect(fromOf(trialOf(pots, { design }))).toBe(
      "this trial's own error between positions, which holds for cultivar alone",
    );
    const one = pots.map((pot) => ({ ...pot, treatment: { cultivar: pot.treatment['cultivar']! } }));
    expect(fromOf(trialOf(one))).toBe("this trial's own error");
  });
});

suite('against the check', () => {
  test("Dunnett's p for PlantGrowth: 0.3227 and 0.1535 (a published worked example, from memory)", () => {
    const { against_check: found } = entry(plantGrowth());
    expect(found.map(({ treatment }) => treatment['group'])).toEqual(['trt1', 'trt2']);
    expect(found[0]!.p_adjusted).toBeCloseTo(0.3227, 3);
    expect(found[1]!.p_adjusted).toBeCloseTo(0.1535, 3);
    expectClose(found[0]!.estimate!, -0.371, 1e-9);
    expectClose(found[0]!.percent_of_check!, (100 * 4.661) / 5.032, 1e-9);
    expect(found[0]!.lower!).toBeLessThan(found[0]!.estimate!);
  });
});

suite('place', () => {
  test('slopes beside treatments are those of lm', async () => {
    const plants = weights.slice(0, 12).map((weight, index): PlantOfTrial => ({
      container: 'T1',
      row: Math.floor(index / 4) + 1,
      column: (index % 4) + 1,
      treatment: { cultivar: ['a', 'b', 'c', 'b', 'c', 'a'][index % 6]! },
      weight,
    }));
    const [effects] = computeFindings(trialOf(plants, { containers: { row_1: 'wall side' } })).position;
    const expected = await numbersFromR(
      "s <- coef(summary(lm(y ~ factor(t) + r + k))); unname(c(s['r', ], s['k', ]))",
      {
        y: plants.map(({ weight }) => weight!),
        t: plants.map(({ treatment }) => treatment['cultivar']!),
        r: plants.map(({ row: at }) => at!),
        k: plants.map(({ column }) => column!),
      },
    );
    const { rows, columns } = effects!;
    [rows.slope, rows.se, rows.t, rows.p, columns.slope, columns.se, columns.t, columns.p].forEach(
      (value, index) => expectClose(value, expected[index]!, 1e-9),
    );
    expect(effects!.edge.n + effects!.interior.n).toBe(12);
    expect(effects!.halves.map(({ side, n }) => [side, n])).toEqual([
      ['wall side', 4],
      ['opposite wall side', 4],
      ['column 1', 6],
      ['last column', 6],
    ]);
  });

  test('a place that treatments take up wholly is not estimated', () => {
    const plants = weights.slice(0, 9).map((weight, index): PlantOfTrial => ({
      container: 'T1',
      row: Math.floor(index / 3) + 1,
      column: (index % 3) + 1,
      treatment: { cultivar: 'abc'[index % 3]! },
      weight,
    }));
    const [effects] = computeFindings(trialOf(plants)).position;
    expect(effects!.columns).toMatchObject({ slope: null, p: null });
    expect(effects!.columns.reason).toContain('cannot be told apart');
    expect(effects!.rows.p).not.toBeNull();
  });
});

suite('the next trial', () => {
  test("leans on the median error of the site's other trials of the crop, and says so", () => {
    const unreplicated = trialOf(
      ['a', 'b'].flatMap((level, tank) =>
        [100, 110, 120].map((weight): PlantOfTrial => ({
          container: `T${tank}`,
          treatment: { cultivar: level },
          weight,
        })),
      ),
    );
    const [alone] = siteFindings([unreplicated]);
    expect(alone!.findings!.next_trial[0]).toMatchObject({ replicates_needed: null, cv_used: null });
    const [beside] = siteFindings([unreplicated, plantGrowth(), mint()]);
    const [first] = beside!.findings!.next_trial;
    expect(first!.from).toContain('median');
    const variation = [plantGrowth(), mint()].map(
      (trial) =>
        entry(trial, trial.positions.every(({ plants }) => plants === 1) ? 'per_plant_set' : 'per_pot')
          .cv_percent!,
    );
    expectClose(first!.cv_used!, (variation[0]! + variation[1]!) / 2, 1e-12);
    expect(first!.replicates_needed).toBeGreaterThan(2);
  });
});

suite('scores', () => {
  const marks = [2, 1, 4, 1, 0, 3, 3, 1, 4, 0, 2, 3, 2, 0, 5];
  const scored = (blocks: boolean) =>
    trialOf(
      marks.map((weight, index): PlantOfTrial => ({
        container: blocks ? `T${Math.floor(index / 3)}` : 'T0',
        ...(blocks ? { block: `${Math.floor(index / 3)}` } : {}),
        treatment: { cultivar: 'abc'[index % 3]! },
        weight,
      })),
      { variable: { kind: 'scored', unit: '{score}' } },
    );
  const given = {
    y: marks,
    t: marks.map((_, index) => 'abc'[index % 3]!),
    b: marks.map((_, index) => Math.floor(index / 3)),
  };

  test('in blocks are compared by Friedman, with medians and without means or sums of squares', async () => {
    const inference = entry(scored(true));
    const [statistic, p] = await numbersFromR(
      'h <- friedman.test(y, factor(t), factor(b)); unname(c(h$statistic, h$p.value))',
      given,
    );
    expect(inference).toMatchObject({
      verdict: 'tested',
      method: null,
      anova: [],
      means: [],
      differences: [],
    });
    expect(inference.rank_test!.method).toBe('Friedman');
    expectClose(inference.rank_test!.statistic, statistic!, 1e-9);
    expectClose(inference.rank_test!.p, p!, 1e-8);
    expect(
      inference.rank_test!.medians.map(({ treatment, median }) => [treatment['cultivar'], median]),
    ).toEqual([
      ['a', 2],
      ['b', 1],
      ['c', 4],
    ]);
  });

  test('of blocks that lack a treatment are left out of the ranks, and it is said how many', async () => {
    const trial = scored(true);
    expect(entry(trial).rank_test!.reason).toBeUndefined();
    const harvest = trial.harvest.map((record, index) =>
      index === 4 ? { ...record, status: 'culled' as const, values: { fresh_weight: null } } : record,
    );
    const ranks = entry({ ...trial, harvest }).rank_test!;
    const [statistic] = await numbersFromR(
      'unname(friedman.test(y[b != 1], factor(t[b != 1]), factor(b[b != 1]))$statistic)',
      given,
    );
    expectClose(ranks.statistic, statistic!, 1e-9);
    expect(ranks.medians.map(({ n }) => n)).toEqual([5, 4, 5]);
    expect(ranks.reason).toBe('1 block that lacks a treatment takes no part in the ranks.');
  });

  test('without blocks are compared by Kruskal and Wallis', async () => {
    const inference = entry(scored(false));
    const [statistic, p] = await numbersFromR(
      'h <- kruskal.test(y, factor(t)); unname(c(h$statistic, h$p.value))',
      given,
    );
    expect(inference.rank_test!.method).toBe('Kruskal-Wallis');
    expectClose(inference.rank_test!.statistic, statistic!, 1e-9);
    expectClose(inference.rank_test!.p, p!, 1e-8);
  });

  /** A strength for each of four tanks, and in each tank every cultivar once. */
  const splitPlot = (kind: 'scored' | 'counted', blocks: boolean) =>
    trialOf(
      Array.from({ length: 12 }, (_, index): PlantOfTrial => {
        const tank = Math.floor(index / 3);
        return {
          container: blocks ? 'T0' : `T${tank}`,
          plot: `W${tank}`,
          ...(blocks ? { block: `${Math.floor(tank / 2)}` } : {}),
          treatment: { strength: tank % 2 === 0 ? 'half' : 'full', cultivar: 'abc'[index % 3]! },
          weight: marks[index]!,
        };
      }),
      {
        variable: { kind, unit: '{score}' },
        design: { arrangement: 'split plot', allotted: 'position', randomised: true },
      },
    );

  test.each([false, true])('of a split plot are not ranked as if pots were tanks (blocks: %s)', (blocks) => {
    const scores = entry(splitPlot('scored', blocks));
    expect(scores).toMatchObject({ verdict: 'not tested' });
    expect(scores.reason).toContain('units within units');
    expect(scores.rank_test).toBeUndefined();
    const counts = entry(splitPlot('counted', blocks));
    expect(counts).toMatchObject({ verdict: 'tested' });
    expect(counts.rank_test).toBeUndefined();
  });

  const square = (kind: 'scored' | 'counted') =>
    trialOf(
      Array.from({ length: 9 }, (_, index): PlantOfTrial => {
        const [row, column] = [Math.floor(index / 3), index % 3];
        const treatment = { cultivar: 'abc'[(row + column) % 3]! };
        return { container: 'T0', row: row + 1, column: column + 1, treatment, weight: marks[index]! };
      }),
      {
        variable: { kind, unit: '{score}' },
        design: { arrangement: 'latin square', allotted: 'position', randomised: true },
      },
    );

  test('of a Latin square are not ranked as if it had no rows and columns', () => {
    const scores = entry(square('scored'));
    expect(scores).toMatchObject({ verdict: 'not tested' });
    expect(scores.reason).toContain('rows and columns at once');
    expect(entry(square('counted')).verdict).toBe('tested');
    expect(entry(square('counted')).rank_test).toBeUndefined();
  });

  test('of several plants a pot are ranked by the means of pots, in blocks as without', async () => {
    const trial = trialOf(
      marks.slice(0, 12).flatMap((mark, index): PlantOfTrial[] =>
        [0, 1].map((plant) => ({
          container: `T${Math.floor(index / 3)}`,
          row: (index % 3) + 1,
          block: `${Math.floor(index / 3)}`,
          treatment: { cultivar: 'abc'[index % 3]! },
          weight: mark + plant * (index % 2),
        })),
      ),
      { variable: { kind: 'scored', unit: '{score}' } },
    );
    const [statistic, p] = await numbersFromR(
      'h <- friedman.test(y, factor(t), factor(b)); unname(c(h$statistic, h$p.value))',
      {
        y: marks.slice(0, 12).map((mark, index) => mark + (index % 2) / 2),
        t: given.t.slice(0, 12),
        b: given.b.slice(0, 12),
      },
    );
    const { rank_test: ranks } = entry(trial, 'per_plant_set');
    expect(ranks!.method).toBe('Friedman');
    expectClose(ranks!.statistic, statistic!, 1e-9);
    expectClose(ranks!.p, p!, 1e-8);
  });

  test('of one container for each treatment are not tested', () => {
    const trial = trialOf(
      marks.map((weight, index): PlantOfTrial => ({
        container: `T${index % 3}`,
        treatment: { cultivar: 'abc'[index % 3]! },
        weight,
      })),
      { variable: { kind: 'scored', unit: '{score}' } },
    );
    expect(entry(trial)).toMatchObject({ verdict: 'not tested' });
    expect(entry(trial).rank_test).toBeUndefined();
  });
});
