import { expect, test } from 'vitest';
import { computeFindings } from '../../../src/compute/findings.ts';
import { analysesShown } from '../../../src/compute/tables/inference/analyses-shown.ts';
import { comparisonTables } from '../../../src/compute/tables/inference/comparison-tables.ts';
import { drawAgainstCheck } from '../../../src/draw/against-check.ts';
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

test('where two factors have a check, each row of table and figure says which it is held against', () => {
  const crossed = trialOf(
    ['0.5', '1'].flatMap((strength, s) =>
      Object.entries(weights).flatMap(([cultivar, values]) =>
        values.map((weight) => ({
          container: 'T1',
          treatment: { strength, cultivar },
          weight: weight + 30 * s,
        })),
      ),
    ),
    {
      design: { arrangement: 'completely randomised', allotted: 'position', randomised: true },
      check: { strength: '1', cultivar: 'b' },
    },
  );
  const findings = computeFindings(crossed);
  const [inference] = findings.inference;
  const names = (factor: string, level: string) => `${factor} ${level}`;
  const { check } = comparisonTables(crossed, findings, names, inference!, 'working');
  expect(check!.caption).toContain('the check of its factor');
  expect(check!.rows.map(({ heading }) => heading)).toEqual([
    'Strength 0.5 less Strength 1',
    'Cultivar a less Cultivar b',
  ]);
  const { description } = drawAgainstCheck(crossed, findings, inference!, { names })!;
  expect(description).toContain('Strength 0.5 − Strength 1: ');
  expect(description).toContain('Cultivar a − Cultivar b: ');
});
