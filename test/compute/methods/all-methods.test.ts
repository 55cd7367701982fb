import { describe, expect, test } from 'vitest';
import { seasons } from '../../../src/compare/seasons.ts';
import { computeFindings } from '../../../src/compute/findings.ts';
import { levelNames } from '../../../src/compute/format/level-names.ts';
import { methodGroups } from '../../../src/compute/methods/all-methods.ts';
import { firstExample } from '../../../src/compute/methods/first-example.ts';
import { trialOf } from '../../support/trial-of.ts';

const methods = methodGroups.flatMap((group) => group.methods);

test('every method has an anchor of its own, a use, a formula and a reference', () => {
  const ids = [...methods, ...methodGroups].map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const method of methods) {
    expect(method.use.length, method.id).toBeGreaterThan(40);
    expect(method.formula.length, method.id).toBeGreaterThan(0);
    expect(method.references.length, method.id).toBeGreaterThan(0);
  }
});

test('the example of the mean is worked from the trial', () => {
  const trial = trialOf(
    [100, 110, 121].map((weight) => ({ container: 'T1', treatment: { cultivar: 'a' }, weight })),
  );
  const findings = computeFindings(trial);
  const mean = methods.find(({ id }) => id === 'mean')!;
  const worked = firstExample(mean, [{ trial, findings, names: levelNames(trial) }]);
  expect(worked?.example.steps[0]?.formula).toMatch(/= 331(\.0)? ÷ 3 = 110\.3 g$/);
});

test('a trial that tested nothing lends no example to a test', () => {
  const trial = trialOf(
    [100, 110].map((weight) => ({ container: 'T1', treatment: { cultivar: 'a' }, weight })),
  );
  const example = { trial, findings: computeFindings(trial), names: levelNames(trial) };
  for (const id of ['tukey-kramer', 'dunnett', 'letters', 'shapiro-wilk']) {
    expect(
      firstExample(
        methods.find((method) => method.id === id)!,
        [example],
      ),
      id,
    ).toBeNull();
  }
});

describe('an example across trials', () => {
  const pots = (id: string, weights: Record<string, number>) => {
    const trial = trialOf(
      Object.entries(weights).map(([cultivar, weight]) => ({
        container: 'T1',
        treatment: { cultivar },
        weight,
      })),
    );
    trial.id = id;
    trial.metadata.factors![0].kind = 'cultivar';
    return { trial, findings: computeFindings(trial) };
  };
  const entries = seasons([
    pots('one', { A: 100, B: 110 }),
    pots('two', { A: 90, B: 106 }),
    pots('three', { C: 120 }),
  ]).filter(({ measure }) => measure === 'per_pot');
  const stepsOf = (id: string) =>
    methods.find((method) => method.id === id)!.across!(
      entries,
      (cultivar) => `Cultivar ${cultivar}`,
    )!.steps.map(({ formula }) => formula);

  test('shows which trials link which cultivars', () => {
    expect(stepsOf('linked-sets')).toEqual([
      'Cultivar A and Cultivar B: linked by autumn 2025, one (Cultivar A, Cultivar B); autumn 2025, two (Cultivar A, Cultivar B)',
      'Cultivar C: no trial grew it beside another',
    ]);
  });

  // By hand: B less A is 10 and 16, on average 13; what is left is 1.5 four times, squared and summed 9.
  test('shows the error and a difference held against it', () => {
    expect(stepsOf('seasons-compared')).toEqual([
      '5 cells − 3 cultivars − 3 trials + 2 = 1',
      '9.00 ÷ 1 = 9.00',
      '95.0 − 108.0 = −13.0, standard error 3.0',
    ]);
  });

  test('is none of steadiness where nothing was in four trials', () => {
    const steadiness = methods.find(({ id }) => id === 'steadiness')!;
    expect(steadiness.across!(entries, String)).toBeNull();
  });
});
