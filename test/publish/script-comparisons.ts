/** The numbers of one analysis: what the script found beside what the findings say. */
import { expect } from 'vitest';
import { treatmentKey } from '../../src/compute/treatments.ts';
import type { Inference } from '../../src/model/findings.ts';
import {
  Differences,
  entryName,
  entryOf,
  label,
  named,
  rowOf,
  rowsOf,
  type ScriptRun,
} from './script-results.ts';

/** 1e-9 where balanced or by least squares; a mixed model's variances are climbed to, so 1e-6. */
const toleranceOf = (entry: Inference) => (entry.method === 'mixed model' ? 1e-6 : 1e-9);

export function compareModels(run: ScriptRun, entry: Inference): void {
  const mine = entryOf(run, entry);
  const differences = new Differences();
  const within = toleranceOf(entry);
  const what = entryName(entry);
  const rows = rowsOf(mine['anova']);
  for (const row of entry.anova) {
    if (row.sum_of_squares === null && row.f === null) continue;
    const name = `${what}: ${row.term} against ${row.error}`;
    const found = rowOf(rows, name, (each) => each['term'] === row.term && each['error'] === row.error);
    differences.number(`${name}, df`, found['df'], row.df, within);
    for (const key of ['sum_of_squares', 'mean_square', 'error_df', 'f', 'p'] as const) {
      differences.known(`${name}, ${key}`, found[key], row[key], within, 1e-14);
    }
    if (row.f === null) differences.number(`${name}, f`, found['f'], null, 0);
  }
  // A variance near zero is the difference of larger ones: it is held to the largest.
  const largest = Math.max(...entry.variance_components.map(({ variance }) => Math.abs(variance ?? 0)));
  for (const component of entry.variance_components) {
    const found = rowOf(
      rowsOf(mine['variance_components']),
      component.term,
      ({ term }) => term === component.term,
    );
    differences.number(
      `${what}: variance of ${component.term}`,
      found['variance'],
      component.variance,
      within,
      within * largest,
    );
  }
  for (const mean of entry.means) {
    const treatment = label(run.trial, mean.treatment);
    const found = rowOf(rowsOf(mine['means']), treatment, (each) => each['treatment'] === treatment);
    for (const key of ['mean', 'se', 'df', 'lower', 'upper'] as const) {
      differences.number(
        `${what}: ${treatment}, ${key}`,
        found[key],
        mean[key],
        within,
        within * Math.abs(mean.mean ?? 0),
      );
    }
  }
  differences.number(`${what}: cv`, mine['cv_percent'], entry.cv_percent, within);
  differences.number(
    `${what}: lsd`,
    mine['least_significant_difference'],
    entry.least_significant_difference,
    within,
  );
  if (entry.sed) {
    const sed = named(mine['sed']);
    for (const key of ['smallest', 'mean', 'largest'] as const)
      differences.number(`${what}: sed ${key}`, sed[key], entry.sed[key], within);
  }
  if (entry.plants_per_unit) {
    const gains = rowsOf(mine['plants_per_unit']);
    expect(gains).toHaveLength(entry.plants_per_unit.gain.length);
    entry.plants_per_unit.gain.forEach((gain, index) => {
      differences.number(
        `${what}: ${gain.plants} plants`,
        gains[index]!['variance_percent'],
        gain.variance_percent,
        within,
      );
    });
  }
  differences.expectNone();
}

export function compareComparisons(run: ScriptRun, entry: Inference): void {
  const mine = entryOf(run, entry);
  const differences = new Differences();
  const within = toleranceOf(entry);
  const what = entryName(entry);
  const pairs = rowsOf(mine['differences']);
  expect(pairs).toHaveLength(entry.differences.length);
  for (const pair of entry.differences) {
    const [a, b] = [label(run.trial, pair.a), label(run.trial, pair.b)];
    const found = rowOf(pairs, `${a} - ${b}`, (each) => each['a'] === a && each['b'] === b);
    const size = Math.abs(pair.se ?? 0);
    differences.number(`${what}: ${a} - ${b}`, found['estimate'], pair.estimate, within, within * size);
    differences.number(`${what}: ${a} - ${b}, se`, found['se'], pair.se, within);
    differences.number(`${what}: ${a} - ${b}, df`, found['df'], pair.df, within);
    // From 10 degrees of freedom on the script leaves the studentized range to R, whose own error this is.
    const few = 1e-5;
    for (const key of ['lower', 'upper'] as const) {
      differences.number(`${what}: ${a} - ${b}, ${key}`, found[key], pair[key], few, 10 * few * size);
    }
    differences.number(`${what}: ${a} - ${b}, p`, found['p_adjusted'], pair.p_adjusted, 0, few);
  }
  const against = rowsOf(mine['against_check']);
  expect(against).toHaveLength(entry.against_check.length);
  for (const level of entry.against_check) {
    const treatment = label(run.trial, level.treatment);
    const found = rowOf(against, treatment, (each) => each['treatment'] === treatment);
    const pair = entry.differences.find(({ a, b }) =>
      [a, b].some((each) => treatmentKey(each) === treatmentKey(level.treatment)),
    );
    const loose = Math.max(1e-6, within);
    const size = loose * 10 * Math.abs(pair?.se ?? 0);
    for (const key of ['estimate', 'lower', 'upper'] as const) {
      differences.number(
        `${what}: ${treatment} against the check, ${key}`,
        found[key],
        level[key],
        loose,
        size,
      );
    }
    differences.number(
      `${what}: ${treatment} against the check, p`,
      found['p_adjusted'],
      level.p_adjusted,
      loose,
      loose,
    );
    differences.number(
      `${what}: ${treatment} in percent`,
      found['percent_of_check'],
      level.percent_of_check,
      within,
    );
  }
  differences.number(`${what}: pairs`, pairs.length, entry.differences.length, 0);
  differences.expectNone();
}

export function compareChecks(run: ScriptRun, entry: Inference): void {
  const mine = entryOf(run, entry);
  const differences = new Differences();
  const what = entryName(entry);
  const residuals = rowsOf(mine['residuals']);
  const spread = Math.max(...(entry.residuals ?? []).map(({ residual }) => Math.abs(residual)));
  (entry.residuals ?? []).forEach((row, index) => {
    const found = residuals[index] ?? {};
    differences.number(`${what}: fitted ${row.unit}`, found['fitted'], row.fitted, 1e-9, 1e-9 * spread);
    differences.number(`${what}: residual ${row.unit}`, found['residual'], row.residual, 1e-9, 1e-9 * spread);
  });
  const normal = named(mine['shapiro_wilk']);
  differences.known(`${what}: W`, normal['w'], entry.checks?.shapiro_wilk?.w, 1e-8);
  differences.known(`${what}: p of W`, normal['p'], entry.checks?.shapiro_wilk?.p, 1e-6);
  const equal = named(mine['brown_forsythe']);
  for (const key of ['f', 'df1', 'df2', 'p'] as const) {
    differences.known(
      `${what}: Brown-Forsythe ${key}`,
      equal[key],
      entry.checks?.brown_forsythe?.[key],
      1e-8,
    );
  }
  const unusual = rowsOf(mine['unusual']);
  expect(unusual.map(({ container, row, column }) => ({ container, row, column }))).toEqual(
    (entry.checks?.unusual ?? []).map(({ container, row, column }) => ({ container, row, column })),
  );
  entry.checks?.unusual.forEach((row, index) => {
    differences.number(`${what}: unusual`, unusual[index]!['residual'], row.residual, 1e-9);
  });
  differences.number(`${what}: units`, residuals.length, entry.residuals?.length, 0);
  differences.expectNone();
}

export function compareTests(run: ScriptRun, entry: Inference): void {
  const mine = entryOf(run, entry);
  const differences = new Differences();
  const what = entryName(entry);
  if (entry.rank_test && entry.rank_test.statistic !== null) {
    const found = named(mine['rank_test']);
    for (const key of ['statistic', 'df', 'p'] as const)
      differences.number(`${what}: ranks ${key}`, found[key], entry.rank_test[key], 1e-9);
    for (const { treatment, median, n } of entry.rank_test.medians) {
      const name = label(run.trial, treatment);
      const row = rowOf(rowsOf(found['medians']), name, (each) => each['treatment'] === name);
      differences.number(`${what}: median of ${name}`, row['median'], median, 1e-12);
      differences.number(`${what}: units of ${name}`, row['n'], n, 0);
    }
  }
  const test = entry.randomisation_test;
  if (test?.exact && mine['randomisation_test'] !== undefined) {
    const found = named(mine['randomisation_test']);
    differences.number(`${what}: arrangements`, found['arrangements'], test.arrangements, 0);
    differences.number(`${what}: p of arrangements`, found['p'], test.p, 1e-12);
  }
  const square = run.trial.metadata.design.arrangement === 'latin square';
  expect(mine['randomisation_test'] !== undefined).toBe(
    test !== null && test.exact && test.p !== null && !square,
  );
  if (entry.transformed) {
    const found = named(mine['transformed']);
    const within = toleranceOf(entry);
    for (const { term, f, p } of entry.transformed.terms) {
      const row = rowOf(rowsOf(found['terms']), term, (each) => each['term'] === term);
      differences.known(`${what}: ${term} on the other scale, f`, row['f'], f, within);
      differences.known(`${what}: ${term} on the other scale, p`, row['p'], p, within, 1e-14);
    }
    for (const mean of entry.transformed.means) {
      const name = label(run.trial, mean.treatment);
      const row = rowOf(rowsOf(found['means']), name, (each) => each['treatment'] === name);
      for (const key of ['mean', 'lower', 'upper'] as const)
        differences.number(`${what}: ${name} turned back, ${key}`, row[key], mean[key], within);
    }
  }
  expect(mine['transformed'] !== undefined).toBe(Boolean(entry.transformed));
  expect(differences.found).toEqual([]);
}

export function comparePlace({ findings, results }: ScriptRun): void {
  const differences = new Differences();
  const places = Array.isArray(results['position']) ? results['position'].map(named) : [];
  expect(places.map(({ container }) => container)).toEqual(
    findings.position.map(({ container }) => container),
  );
  findings.position.forEach((effects, index) => {
    const mine = places[index]!;
    const what = `place in ${effects.container}`;
    for (const way of ['rows', 'columns'] as const) {
      const size = Math.abs(effects[way].se ?? effects[way].slope ?? 0);
      for (const key of ['slope', 'se', 't', 'df', 'p'] as const) {
        differences.known(
          `${what}: ${way}, ${key}`,
          named(mine[way])[key],
          effects[way][key],
          1e-9,
          key === 'slope' ? 1e-9 * size : 1e-12,
        );
      }
    }
    for (const part of ['edge', 'interior'] as const) {
      differences.number(`${what}: ${part}`, named(mine[part])['mean'], effects[part].mean, 1e-12);
      differences.number(`${what}: ${part}, n`, named(mine[part])['n'], effects[part].n, 0);
    }
    const found = named(mine['morans_i']);
    const { i, expected, variance, p, exact_p } = effects.morans_i;
    differences.known(`${what}: I`, found['i'], i, 1e-9, 1e-12);
    differences.known(`${what}: expected I`, found['expected'], expected, 1e-9, 1e-12);
    differences.known(`${what}: variance of I`, found['variance'], variance, 1e-9, 1e-12);
    differences.known(`${what}: p of I`, found['p'], p, 1e-8, 1e-12);
    differences.known(`${what}: exact p of I`, found['exact_p'], exact_p, 0, 1e-6);
    const halves = Array.isArray(mine['halves']) ? mine['halves'].map(named) : [];
    expect(halves).toHaveLength(effects.halves.length);
    effects.halves.forEach((half, at) => {
      differences.number(`${what}: ${half.side}`, halves[at]!['mean'], half.mean, 1e-12);
      differences.number(`${what}: ${half.side}, n`, halves[at]!['n'], half.n, 0);
    });
  });
  expect(differences.found).toEqual([]);
}
