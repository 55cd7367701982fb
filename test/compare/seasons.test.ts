import { Ajv2020 } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import { existsSync, readFileSync } from 'node:fs';
import { describe as suite, expect, test } from 'vitest';
import { loadContent } from '../../src/commands/load-content.ts';
import { seasons } from '../../src/compare/seasons.ts';
import { siteFindings } from '../../src/compute/site-findings.ts';
import type { TrialWithFindings } from '../../src/model/library.ts';
import { seededRandom } from '../../src/statistics/seeded-random.ts';
import { expectClose } from '../support/close.ts';
import { numbersFromR } from '../support/r.ts';
import { barley, trialsOf } from './barley-trials.ts';

const perPot = (trials: TrialWithFindings[], options = {}) =>
  seasons(trials, options).find(({ measure }) => measure === 'per_pot')!;

const expectedPath = new URL('../../../shared/check-values/cultivars-by-trials-barley.json', import.meta.url);

interface BarleyExpected {
  anova: { term: string; df: number; ss: number; F: number; p: number }[];
  emm_fixed: { variety: string; emmean: number; SE: number }[];
  tukey: { pairs: { a: string; b: string; diff: number; lwr: number; upr: number; p: number }[] };
  letters_tukey: { letters: Record<string, string> };
}

suite('the barley trials of 1931 and 1932', () => {
  const found = perPot(trialsOf(barley));

  test('trials and varieties: F 41.59 on 11 and 5.58 on 9, residual 99', () => {
    expect(found.anova.map(({ term, df }) => [term, df])).toEqual([
      ['trial', 11],
      ['cultivar', 9],
      ['residual', 99],
    ]);
    expectClose(found.anova[0]!.f, 41.58656764365501, 1e-9);
    expectClose(
      found.adjusted_means.find(({ cultivar }) => cultivar === 'Trebi')!.mean,
      39.399993333333335,
      1e-9,
    );
    expect(found.verdict).toBe('compared');
  });

  test.skipIf(!existsSync(expectedPath))(
    'every mean, pair and letter of cultivars-by-trials-barley.json',
    () => {
      const { expected } = JSON.parse(readFileSync(expectedPath, 'utf8')) as { expected: BarleyExpected };
      for (const { variety, emmean, SE } of expected.emm_fixed) {
        const mean = found.adjusted_means.find(({ cultivar }) => cultivar === variety)!;
        expectClose(mean.mean, emmean, 1e-9);
        expectClose(mean.se, SE, 1e-9);
        expect(mean.letters).toBe(expected.letters_tukey.letters[variety]);
      }
      for (const { a, b, diff, lwr, upr, p } of expected.tukey.pairs) {
        const pair = found.differences.find((each) => each.a === a && each.b === b);
        const turned = found.differences.find((each) => each.a === b && each.b === a);
        const sign = pair ? 1 : -1;
        const one = (pair ?? turned)!;
        expectClose(sign * one.estimate, diff, 1e-8);
        expectClose(sign * (sign > 0 ? one.lower! : one.upper!), lwr, 1e-6);
        expectClose(sign * (sign > 0 ? one.upper! : one.lower!), upr, 1e-6);
        expectClose(one.p_adjusted, p, 1e-6);
      }
      const line = expected.anova.find(({ term }) => term === 'variety')!;
      expectClose(found.anova[1]!.f, line.F, 1e-9);
      expectClose(found.anova[1]!.p, line.p, 1e-8);
    },
  );

  test('steadiness: slopes average 1, ecovalences add up to the residual', () => {
    const slopes = found.stability.map(({ regression_slope }) => regression_slope!);
    expectClose(slopes.reduce((total, slope) => total + slope, 0) / slopes.length, 1, 1e-9);
    const ecovalences = found.stability.map(({ ecovalence }) => ecovalence);
    expectClose(
      ecovalences.reduce((total, each) => total + each, 0),
      found.anova[2]!.sum_of_squares,
      1e-9,
    );
    expect(found.stability.every(({ stability_variance }) => stability_variance !== null)).toBe(true);
  });
});

suite('a table with holes', () => {
  const random = seededRandom(1934);
  const cells = barley.filter(() => random.integer(5) > 0);

  test('with a fifth of the cells missing agrees with lm', async () => {
    const found = perPot(trialsOf(cells));
    expect(found.linked_sets).toHaveLength(1);
    const names = [...new Set(cells.map(({ variety }) => variety))];
    const expected = await numbersFromR(
      `v <- factor(v, levels = n); t <- factor(t)
       fit <- lm(y ~ v + t, contrasts = list(t = 'contr.sum'))
       e <- coef(fit)[1] + c(0, coef(fit)[2:length(n)])
       d <- coef(summary(fit))[2:length(n), 'Std. Error']
       unname(c(deviance(fit), df.residual(fit), drop1(fit, test = 'F')['v', 'F value'], e, d))`,
      {
        y: cells.map(({ y }) => y),
        v: cells.map(({ variety }) => variety),
        t: cells.map(({ trial }) => trial),
        n: names,
      },
    );
    const residual = found.anova[2]!;
    expectClose(residual.sum_of_squares, expected[0]!, 1e-9);
    expect(residual.df).toBe(expected[1]);
    expectClose(found.anova[1]!.f, expected[2]!, 1e-9);
    names.forEach((name, index) => {
      expectClose(
        found.adjusted_means.find(({ cultivar }) => cultivar === name)!.mean,
        expected[3 + index]!,
        1e-9,
      );
      if (index === 0) return;
      const pair = found.differences.find(({ a, b }) => [a, b].includes(name) && [a, b].includes(names[0]!))!;
      expectClose(pair.se, expected[3 + names.length + index - 1]!, 1e-9);
    });
  });

  test('that falls into two sets compares none of one with any of the other', () => {
    const [first, second] = [
      ['Trebi', 'Velvet', 'Svansota'],
      ['Glabron', 'Peatland'],
    ];
    const parted = barley.filter(({ variety, trial }) =>
      trial.endsWith('1931') ? first!.includes(variety) : second!.includes(variety),
    );
    const found = perPot(trialsOf(parted));
    expect(found.linked_sets.map((set) => [...set].sort())).toEqual([
      [...first!].sort(),
      [...second!].sort(),
    ]);
    expect(found.differences).toHaveLength(3 + 1);
    expect(found.differences.every(({ a, b }) => first!.includes(a) === first!.includes(b))).toBe(true);
    expect(found).toMatchObject({ verdict: 'compared' });
    expect(found.reason).toContain('2 sets');
  });
});

suite('what cannot be compared', () => {
  test('one trial, with the reason', () => {
    const found = perPot(trialsOf(barley.filter(({ trial }) => trial === 'Waseca 1931')));
    expect(found).toMatchObject({ verdict: 'not compared', stability: [] });
    expect(found.reason).toContain('one trial');
    expect(found.adjusted_means.every(({ se, letters }) => se === null && letters === null)).toBe(true);
  });

  test('two trials that share one cultivar only leave no error', () => {
    const few = barley.filter(
      ({ variety, trial }) =>
        (trial === 'Waseca 1931' && ['Trebi', 'Velvet'].includes(variety)) ||
        (trial === 'Duluth 1931' && ['Trebi', 'Glabron'].includes(variety)),
    );
    expect(perPot(trialsOf(few))).toMatchObject({ verdict: 'not compared' });
  });

  test('different units are never one comparison', () => {
    const [one, two] = trialsOf(barley.filter(({ trial }) => ['Waseca 1931', 'Duluth 1931'].includes(trial)));
    two!.findings = { ...two!.findings!, variable: { ...two!.findings!.variable, unit: '[bu_us]/[acr_us]' } };
    expect(seasons([one!, two!]).filter(({ measure }) => measure === 'per_pot')).toHaveLength(2);
  });
});

suite('the demo', () => {
  test('compares the lettuces that met, refuses the one that met none, and fits its schema', async () => {
    const { trials } = await loadContent(new URL('../../content', import.meta.url).pathname);
    const all = seasons(siteFindings(trials));
    const lettuce = all.find(
      ({ species, measure }) => species === 'Lactuca sativa' && measure === 'per_pot',
    )!;
    expect(lettuce.verdict).toBe('compared');
    expect(lettuce.trials_differ.join(' ')).toContain('averaged over plants per pot');
    expect(lettuce.linked_sets).toContainEqual(['pewter-godwit']);
    expect(lettuce.differences.some(({ a, b }) => [a, b].includes('pewter-godwit'))).toBe(false);
    const schema = JSON.parse(
      readFileSync(new URL('../../schemas/seasons.schema.json', import.meta.url), 'utf8'),
    ) as object;
    const validate = formats.default(new Ajv2020({ strict: true, allowUnionTypes: true })).compile(schema);
    validate(JSON.parse(JSON.stringify(all)));
    expect(validate.errors ?? []).toEqual([]);
  });

  test("brings yields by area with the standard errors of the trials' own analyses", async () => {
    const { trials } = await loadContent(new URL('../../content', import.meta.url).pathname);
    const all = seasons(siteFindings(trials));
    const cells = (wanted: string) =>
      all
        .find(({ species, measure }) => species === 'Lactuca sativa' && measure === wanted)!
        .cells.filter(({ trial }) => trial === 'spring-lettuce-2026');
    const pots = cells('per_pot');
    cells('kg_per_m2').forEach(({ mean, se }, index) => {
      // 12 positions under a cover of 1.2 m by 0.6 m: 0.06 m2 a pot.
      expectClose(mean, pots[index]!.mean / 60, 1e-12);
      expectClose(se, pots[index]!.se! / 60, 1e-12);
    });
  });

  test('a reader may leave out trials that were not replicated', async () => {
    const { trials } = await loadContent(new URL('../../content', import.meta.url).pathname);
    const found = perPot(siteFindings(trials), { onlyReplicated: true });
    expect(found.trials.every(({ replicated }) => replicated)).toBe(true);
    expect(found.trials.map(({ id }) => id)).not.toContain('four-lettuces-2024');
    expect(found.cells.some(({ cultivar }) => cultivar === 'umber-dotterel')).toBe(false);
  });
});
