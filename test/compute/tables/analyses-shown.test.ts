import { expect, test } from 'vitest';
import { computeFindings } from '../../../src/compute/findings.ts';
import { analysesShown } from '../../../src/compute/tables/inference/analyses-shown.ts';
import { trialOf } from '../../support/trial-of.ts';

const weights = { a: [100, 112, 95], b: [140, 131, 150] };
const trial = trialOf(
  Object.entries(weights).flatMap(([cultivar, values]) =>
    values.map((weight) => ({ container: 'T1', treatment: { cultivar }, weight })),
  ),
  { design: { arrangement: 'completely randomised', allotted: 'position', randomised: true } },
);

test('an analysis that comes to the same numbers is named once and not shown again', () => {
  const findings = computeFindings(trial);
  const shown = analysesShown(trial, findings);
  const named = shown.flatMap(({ inference, repeats }) => [inference, ...repeats]);
  expect(named).toHaveLength(findings.inference.length);
  expect(new Set(named).size).toBe(named.length);
  // One plant a pot and none lost: per pot, per plant set and per plant harvested are one and the same.
  expect(shown).toHaveLength(1);
});
