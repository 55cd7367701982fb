import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe as suite, expect, test } from 'vitest';
import { loadContent } from '../../src/commands/load-content.ts';
import type { Inference } from '../../src/model/findings.ts';
import type { Trial } from '../../src/model/trial.ts';
import { mint, npk, oats, plantGrowth } from '../compute/published.ts';
import { publishedContent } from '../published/as-trial-folders.ts';
import { runR, sharedR } from '../support/r.ts';
import { bare, full } from './example.ts';
import {
  compareChecks,
  compareComparisons,
  compareModels,
  comparePlace,
  compareTests,
} from './script-comparisons.ts';
import {
  heavyPlants,
  hostile,
  factorialWithoutOne,
  incompleteTanks,
  latinSquare,
  lostPlants,
  oneTankAStrength,
  scores,
  tanksWithDead,
  tanksWithLost,
  twoCuts,
  twoSquares,
  unbalancedFactorial,
  unbalancedSplitPlot,
} from './script-trials.ts';
import { compareDescription, entryName, named, runScript, type ScriptRun } from './script-results.ts';

/** The trials of the published folders, checked like every grower's. */
async function publishedTrials(): Promise<Trial[]> {
  const folder = await mkdtemp(join(tmpdir(), 'tankside-published-'));
  for (const [path, text] of Object.entries(await publishedContent(await sharedR()))) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  }
  const { trials } = await loadContent(folder);
  await rm(folder, { recursive: true });
  return [...trials];
}

const demo = await loadContent(fileURLToPath(new URL('../../content', import.meta.url)));

const trials: readonly (readonly [string, Trial])[] = [
  ...demo.trials
    .filter(({ metadata }) => metadata.status === 'finished')
    .map((trial) => [`the demo's ${trial.id}`, trial] as const),
  ...(await publishedTrials()).map((trial) => [`the published ${trial.id}`, trial] as const),
  ['plantGrowth (Dobson 1983)', plantGrowth()],
  ['mint (Steel and Torrie 1980)', mint()],
  ['npk (Venables and Ripley 2002)', npk()],
  ['oats (Yates 1935), main plots in benches', oats('plot')],
  ['oats (Yates 1935), main plots that are containers', oats('container')],
  ['a split plot with plots lost', unbalancedSplitPlot()],
  ['a Latin square', latinSquare()],
  ['a factorial with a combination never grown', factorialWithoutOne()],
  ['two Latin squares', twoSquares()],
  ['one tank for each strength, a pot lost', oneTankAStrength()],
  ['tanks with dead plants', tanksWithDead()],
  ['plants within pots, some lost', lostPlants()],
  ['heavy plants within pots, some lost', heavyPlants()],
  ['two cuts', twoCuts()],
  ['a factorial of unequal numbers', unbalancedFactorial()],
  ['tanks that hold some of the cultivars', incompleteTanks()],
  ['tanks with plants lost', tanksWithLost()],
  ['scores', scores()],
  ['a trial that uses every optional field', full.trial],
  ['a trial without factors', bare.trial],
];

suite.each(trials)('analysis.R of %s', (_, trial) => {
  let run: ScriptRun;
  beforeAll(async () => {
    run = await runScript(trial);
  });

  test('describes every treatment within 1e-12', () => {
    compareDescription(run);
  });

  test('has an entry for each of the findings, with the same verdict and nothing tested that is not', () => {
    const mine = run.results['inference'] === undefined ? {} : named(run.results['inference']);
    expect(Object.keys(mine)).toEqual(run.findings.inference.map(entryName));
    for (const entry of run.findings.inference) {
      const found = named(mine[entryName(entry)]);
      expect(found['verdict']).toBe(entry.verdict);
      if (entry.verdict === 'not tested') {
        expect(found['reason']).toBe(entry.reason);
        expect(Object.keys(found)).toEqual(['measure', 'cut', 'verdict', 'reason']);
      }
    }
  });

  const tested = (compare: (of: ScriptRun, entry: Inference) => void) => () => {
    for (const entry of run.findings.inference) if (entry.verdict === 'tested') compare(run, entry);
  };
  // Scores have medians and ranks only.
  const ofAmounts = (compare: (of: ScriptRun, entry: Inference) => void) =>
    tested((of, entry) => {
      if (entry.anova.length > 0) compare(of, entry);
    });
  test('analysis of variance, variances, means', ofAmounts(compareModels));
  test('pairs, and levels against the check', ofAmounts(compareComparisons));
  test('residuals and the checks of the analysis', ofAmounts(compareChecks));
  test('ranks, arrangements and the other scale', tested(compareTests));
  test('place within containers', () => {
    comparePlace(run);
  });
});

suite('text that tries to do harm', () => {
  test('stays text: in strings, in names and in comments', async () => {
    const run = await runScript(hostile());
    compareDescription(run);
    expect(await runR('exists("harmed")')).toBe(false);
    // Nothing but plain ASCII outside comments, and every comment is one line of its own.
    for (const line of run.script.split('\n')) {
      if (!line.startsWith('#')) expect(line).toMatch(/^[\x20-\x7e]*$/);
      expect(line).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
    }
    expect(run.findings.inference.some(({ verdict }) => verdict === 'tested')).toBe(true);
    run.findings.inference
      .filter(({ verdict }) => verdict === 'tested')
      .forEach((entry) => {
        compareModels(run, entry);
      });
  });
});

suite('a script as a reader meets it', () => {
  test('begins with the trial, its version, its licence and how to run it', async () => {
    const { script } = await runScript(plantGrowth());
    const [first, second] = script.split('\n');
    expect(first).toBe('# A trial for the tests (test-trial), version 1.0.0');
    expect(second).toContain('CC0-1.0');
    expect(script).toContain('#     Rscript analysis.R');
  });

  test('prints what it found', async () => {
    const { printed } = await runScript(plantGrowth());
    expect(printed.join('\n')).toContain('4.846088');
  });

  test('has no model where nothing is tested', async () => {
    const untested = demo.trials.find(({ id }) => id === 'four-lettuces-2024');
    if (!untested) return expect.fail('the demo has no unreplicated trial');
    const { script } = await runScript(untested);
    expect(script).not.toContain('aov(');
    expect(script).not.toContain('fit_by');
  });
});

afterAll(async () => {
  await runR('rm(list = ls())');
});
