import { describe as suite, expect, test } from 'vitest';
import { computeFindings } from '../../src/compute/findings.ts';
import type { Inference } from '../../src/model/findings.ts';
import type { Trial } from '../../src/model/trial.ts';
import { numbersFromR } from '../support/r.ts';
import { type PlantOfTrial, trialOf } from '../support/trial-of.ts';
import { expectClose } from '../support/close.ts';
import { mint, npk, oats, plantGrowth, publishedTable } from './published.ts';

function entry(trial: Trial, measure: Inference['measure'] = 'per_plant_set'): Inference {
  const found = computeFindings(trial).inference.find(
    (each) => each.measure === measure && each.cut === 'all',
  );
  if (!found) throw new Error(`no inference for ${measure}`);
  return found;
}

function row(inference: Inference, term: string, error?: string) {
  const found = inference.anova.find(
    (each) => each.term === term && (error === undefined || each.error === error),
  );
  if (!found) throw new Error(`no row for ${term}`);
  return found;
}

suite('completely randomised: PlantGrowth (Dobson 1983, table 7.1)', () => {
  test('F is 4.846 on 2 and 27 degrees of freedom, p 0.0159', () => {
    const inference = entry(plantGrowth());
    expect(inference).toMatchObject({ verdict: 'tested', method: 'analysis of variance' });
    expect(inference.model).toContain('balanced, so each term');
    expectClose(row(inference, 'group').f!, 4.846087862380135, 1e-9);
    expectClose(row(inference, 'group').p!, 0.015909958325622937, 1e-8);
    expect(row(inference, 'group')).toMatchObject({ df: 2, error_df: 27 });
    expectClose(inference.cv_percent!, 12.28808648278209, 1e-9);
    expect(inference.units).toEqual([
      { factor: 'group', experimental_unit: 'position', replicates: { ctrl: 10, trt1: 10, trt2: 10 } },
    ]);
  });

  test('pairs by Tukey, letters, and the checks of the analysis', () => {
    const inference = entry(plantGrowth());
    const pair = inference.differences.find(({ a, b }) => a['group'] === 'ctrl' && b['group'] === 'trt1')!;
    expectClose(pair.p_adjusted!, 0.39087114420210683, 1e-8);
    expectClose(pair.lower!, -0.32021605140286225, 1e-8);
    expectClose(pair.upper!, 1.0622160514028631, 1e-8);
    expect(inference.means.map(({ treatment, letters }) => [treatment['group'], letters])).toEqual([
      ['ctrl', 'ab'],
      ['trt1', 'b'],
      ['trt2', 'a'],
    ]);
    expectClose(inference.least_significant_difference!, 0.5720126115599633, 1e-9);
    expectClose(inference.checks!.shapiro_wilk!.w!, 0.9660681188741848, 1e-8);
    expectClose(inference.checks!.brown_forsythe!.f!, 1.11918569487039, 1e-9);
  });
});

suite('plants within pots: mint (Steel and Torrie 1980, section 7.9)', () => {
  test('pots, not plants, are the replicates: F 16.69 on 5 and 12, not 31.09 on 5 and 66', () => {
    const inference = entry(mint());
    const treatment = row(inference, 'treatment');
    expectClose(treatment.f!, 16.689354838709676, 1e-9);
    expectClose(treatment.p!, 4.8810621931571634e-5, 1e-8);
    expect(treatment).toMatchObject({ df: 5, error: 'position', error_df: 12 });
    expectClose(treatment.sum_of_squares!, 179.64236111111111, 1e-9);
    expect(inference.units[0]!.replicates).toMatchObject({ low8: 3, high16: 3 });
    const components = Object.fromEntries(
      inference.variance_components.map(({ term, variance }) => [term, variance]),
    );
    expectClose(components['position']!, 0.30468749999999944, 1e-9);
    expectClose(components['plant']!, 0.934027777777779, 1e-9);
    expectClose(inference.means[0]!.se!, 0.42355418561046954, 1e-9);
    expectClose(inference.checks!.shapiro_wilk!.w!, 0.9397968849690322, 1e-8);
  });

  test('a pot total is the same analysis on another scale', () => {
    const inference = entry(mint(), 'per_pot');
    expectClose(row(inference, 'treatment').f!, 16.689354838709676, 1e-9);
  });

  test('letters are those of the right error', () => {
    const letters = Object.fromEntries(
      entry(mint()).means.map((mean) => [mean.treatment['treatment'], mean.letters]),
    );
    expect(letters).toEqual({ low8: 'c', low12: 'c', low16: 'bc', high8: 'a', high12: 'ab', high16: 'a' });
  });
});

suite('factorial in blocks: npk (Venables and Ripley 2002)', () => {
  test('N:P:K cannot be told apart from blocks: a row without f and p, with the reason', () => {
    const inference = entry(npk());
    expectClose(row(inference, 'n').f!, 12.258734213650923, 1e-9);
    expectClose(row(inference, 'n').p!, 0.004371811825799353, 1e-8);
    expectClose(row(inference, 'block').sum_of_squares!, 343.295, 1e-9);
    expect(row(inference, 'n:p:k')).toMatchObject({ f: null, p: null });
    expect(row(inference, 'n:p:k').reason).toContain('block');
    expect(inference.verdict).toBe('tested');
    const mean = inference.means.find(
      ({ treatment }) => treatment['n'] === '0' && Object.keys(treatment).length === 1,
    )!;
    expectClose(mean.mean!, 52.066666666666656, 1e-9);
    expectClose(mean.se!, 1.1343337088189547, 1e-9);
    expect(mean.df).toBe(12);
  });
});

suite('split plot: oats (Yates 1935)', () => {
  test.each(['plot', 'container'] as const)('varieties are tested between main plots (%s)', (mainPlots) => {
    const inference = entry(oats(mainPlots));
    expectClose(row(inference, 'variety').f!, 1.4853403794363331, 1e-9);
    expectClose(row(inference, 'variety').p!, 0.2723868567352076, 1e-8);
    expect(row(inference, 'variety')).toMatchObject({ df: 2, error: mainPlots, error_df: 10 });
    expectClose(row(inference, 'nitrogen').f!, 37.68564705882353, 1e-9);
    expect(row(inference, 'nitrogen')).toMatchObject({ df: 3, error: 'position', error_df: 45 });
    expect(inference.units.map((unit) => [unit.factor, unit.experimental_unit])).toEqual([
      ['variety', mainPlots],
      ['nitrogen', 'position'],
    ]);
  });

  test('a difference across main plots has a standard error and degrees of freedom of its own', () => {
    const inference = entry(oats('plot'));
    const pair = (a: Record<string, string>, b: Record<string, string>) =>
      inference.differences.find(
        (each) =>
          (JSON.stringify(each.a) === JSON.stringify(a) && JSON.stringify(each.b) === JSON.stringify(b)) ||
          (JSON.stringify(each.a) === JSON.stringify(b) && JSON.stringify(each.b) === JSON.stringify(a)),
      )!;
    const same = pair({ variety: 'Victory', nitrogen: '0.0cwt' }, { variety: 'Victory', nitrogen: '0.2cwt' });
    expectClose(same.se!, 7.682953714410739, 1e-9);
    const across = pair(
      { variety: 'Victory', nitrogen: '0.0cwt' },
      { variety: 'Marvellous', nitrogen: '0.0cwt' },
    );
    expectClose(across.se!, 9.715025113861676, 1e-9);
    // 30.2308 is lmerTest's; REML and mean squares agree in balanced data with components above zero.
    expectClose(across.df!, 30.230780236733207, 1e-5);
    const varieties = pair({ variety: 'Victory' }, { variety: 'Marvellous' });
    expectClose(varieties.se!, 7.078903843790349, 1e-9);
    expect(varieties.df).toBeCloseTo(10, 9);
  });
});

const oneTankEach = ['a', 'b', 'c'].flatMap((level, tank) =>
  [100, 111, 119, 131].map((weight): PlantOfTrial => ({
    container: `T${tank + 1}`,
    treatment: { cultivar: level },
    weight: weight + 9 * tank,
  })),
);

suite('what the design does not support', () => {
  test('one container for each treatment is described and not tested', () => {
    for (const inference of computeFindings(trialOf(oneTankEach)).inference) {
      expect(inference.verdict).toBe('not tested');
      expect(inference.reason).toContain('cannot be told apart');
      expect(inference.reason).toContain('container');
      expect(inference).toMatchObject({
        anova: [],
        means: [],
        differences: [],
        against_check: [],
        checks: null,
      });
      expect(inference.randomisation_test).toBeNull();
      expect(JSON.stringify(inference)).not.toMatch(/"p(_adjusted)?":0/);
    }
  });

  test('one tank for each strength, cultivars within: the cultivars are tested, the strengths are not', () => {
    const plants = ['0.5', '1', '1.5'].flatMap((strength, tank) =>
      [0, 1, 2, 3, 4, 5].map((index): PlantOfTrial => ({
        container: `T${tank + 1}`,
        treatment: { strength, cultivar: index % 2 === 0 ? 'a' : 'b' },
        weight: 100 + 20 * tank + 7 * (index % 2) + [1, -2, 3, 0, 2, -1][(index + tank) % 6]!,
      })),
    );
    const inference = entry(trialOf(plants));
    expect(inference.verdict).toBe('tested');
    expect(row(inference, 'strength')).toMatchObject({ f: null, p: null });
    expect(row(inference, 'cultivar').p).toBeLessThan(0.05);
    expect(inference.reason).toContain('strength');
    const strengths = inference.means.filter(({ treatment }) => Object.keys(treatment).join() === 'strength');
    expect(strengths.map(({ letters, se, lower }) => [letters, se, lower])).toEqual([
      [null, null, null],
      [null, null, null],
      [null, null, null],
    ]);
    expect(inference.differences.some(({ a }) => Object.keys(a).join() === 'strength')).toBe(false);
  });

  test('weights all alike leave no error to test against', () => {
    const alike = trialOf(
      oneTankEach.map((plant, index) => ({
        ...plant,
        container: `T${(index % 6) + 1}`,
        weight: 120.1,
        treatment: { cultivar: ['a', 'b', 'c'][index % 3]! },
      })),
    );
    expect(entry(alike)).toMatchObject({ verdict: 'not tested', anova: [] });
    expect(entry(alike).reason).toContain('no error');
  });

  test('a treatment that never varies within a block is named as confounded with it', () => {
    const plants = ['1', '2', '3', '4'].flatMap((block, index) =>
      [100, 107, 113].map((weight): PlantOfTrial => ({
        container: `T${block}`,
        block,
        treatment: { cultivar: index < 2 ? 'a' : 'b' },
        weight: weight + 5 * index,
      })),
    );
    const inference = entry(
      trialOf(plants, {
        design: { arrangement: 'randomised blocks', allotted: 'container', randomised: true },
      }),
    );
    expect(inference.verdict).toBe('not tested');
    expect(inference.reason).toContain('block');
  });

  test('a trial without lots is tested with that said beside the test', () => {
    const trial = plantGrowth();
    trial.metadata.design.randomised = false;
    expect(entry(trial).verdict).toBe('tested');
    expect(entry(trial).reason).toContain('Lots were not drawn');
  });
});

suite('unbalanced designs', () => {
  test('blocks with plots missing: Type III F and adjusted means are those of lm', async () => {
    const blocks = ['1', '2', '3', '4'];
    const levels = ['a', 'b', 'c'];
    const weights = [131, 150, 145, 122, 149, 139, 140, 171, 150, 128, 147, 152];
    const plants = blocks.flatMap((block, i) =>
      levels.map((level, j): PlantOfTrial => ({
        container: `T${block}`,
        block,
        treatment: { cultivar: level },
        weight: (i === 1 && j === 2) || (i === 3 && j === 0) ? null : weights[3 * i + j]!,
      })),
    );
    const trial = trialOf(plants, {
      design: { arrangement: 'randomised blocks', allotted: 'position', randomised: true },
    });
    const inference = entry(trial);
    const kept = plants.filter(({ weight }) => weight !== null);
    const [f, p, meanA, seA] = await numbersFromR(
      `b <- factor(b); t <- factor(t)
       fit <- lm(y ~ b + t, contrasts = list(b = 'contr.sum', t = 'contr.sum'))
       d <- drop1(fit, . ~ ., test = 'F')
       l <- c(1, 0, 0, 0, contr.sum(3)[1, ])
       unname(c(d['t', 'F value'], d['t', 'Pr(>F)'], sum(l * coef(fit)), sqrt(drop(t(l) %*% vcov(fit) %*% l))))`.replaceAll(
        't(l)',
        'base::t(l)',
      ),
      {
        y: kept.map(({ weight }) => weight!),
        b: kept.map(({ block }) => block!),
        t: kept.map(({ treatment }) => treatment['cultivar']!),
      },
    );
    expectClose(row(inference, 'cultivar').f!, f!, 1e-9);
    expectClose(row(inference, 'cultivar').p!, p!, 1e-8);
    expect(row(inference, 'cultivar').error_df).toBe(4);
    expectClose(inference.means[0]!.mean!, meanA!, 1e-9);
    expectClose(inference.means[0]!.se!, seA!, 1e-9);
  });

  test('mint with plants lost is a mixed model, its degrees of freedom at most those of pots', () => {
    const trial = mint();
    const lost = trial.harvest.map((record, index) =>
      index % 9 === 0 ? { ...record, status: 'dead' as const, values: { fresh_weight: null } } : record,
    );
    const inference = entry({ ...trial, harvest: lost }, 'per_plant_harvested');
    expect(inference).toMatchObject({ verdict: 'tested', method: 'mixed model' });
    expect(inference.model).toContain('not balanced, with several errors');
    expect(row(inference, 'treatment').error_df).toBeLessThanOrEqual(12 + 1e-9);
    expect(row(inference, 'treatment').error_df).toBeGreaterThan(10);
    expect(publishedTable('mint')['y']).toHaveLength(72);
  });
});
