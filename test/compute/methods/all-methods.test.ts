import { expect, test } from 'vitest';
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
