import { expect, test } from 'vitest';
import { computeFindings } from '../../../src/compute/findings.ts';
import { levelNames } from '../../../src/compute/format/level-names.ts';
import { measuresShown } from '../../../src/compute/tables/measures.ts';
import { treatmentSummaryTable } from '../../../src/compute/tables/treatment-summary.ts';
import { trialOf, type PlantOfTrial } from '../../support/trial-of.ts';

const plant = (weight: number | null, more: Partial<PlantOfTrial> = {}): PlantOfTrial => ({
  container: 'T1',
  treatment: { cultivar: 'a' },
  weight,
  ...more,
});

const tableOf = (plants: PlantOfTrial[], measure: Parameters<typeof treatmentSummaryTable>[4]) => {
  const trial = trialOf(plants);
  const findings = computeFindings(trial);
  return treatmentSummaryTable(
    trial,
    findings,
    levelNames(trial),
    findings.treatments,
    measure,
    (row) => `w${row}`,
  );
};

test('a row is headed by its treatment and holds n, mean, standard deviation and CV, each leading to its working', () => {
  // 100, 110 and 120: mean 110, standard deviation 10, CV 100 x 10 / 110 = 9.09, by hand.
  const table = tableOf([plant(100), plant(110), plant(120)], 'per_plant_harvested');
  expect(table.columns.map(({ heading }) => heading)).toEqual([
    'Treatment',
    'n',
    'Mean',
    'Standard deviation',
    'CV',
  ]);
  expect(table.rows).toHaveLength(1);
  expect(table.rows[0]!.cells).toEqual([
    { text: '3', working: 'w0' },
    {
      text: expect.objectContaining({ metric: expect.stringMatching(/^110/) as string }) as object,
      working: 'w0',
    },
    {
      text: expect.objectContaining({ metric: expect.stringMatching(/^10(\.0)?$/) as string }) as object,
      working: 'w0',
    },
    { text: '9.1', working: 'w0' },
  ]);
});

test('an unknown weight is counted in a column of its own and said below the table', () => {
  const table = tableOf(
    [plant(100), plant(110), plant(null, { status: 'not weighed' })],
    'per_plant_harvested',
  );
  expect(table.columns.map(({ heading }) => heading)).toContain('Unknown');
  expect(table.notes.join(' ')).toContain('never taken as 0');
});

test('a number that cannot be computed is a dash without a working, and the reason stands below', () => {
  const table = tableOf([plant(100)], 'per_plant_harvested');
  const cells = table.rows[0]!.cells;
  expect(cells[2]).toBe('–');
  expect(table.notes.join(' ')).toContain('One value has no spread.');
});

test('per plant set is shown only where a plant was lost', () => {
  const shown = (plants: PlantOfTrial[]) => measuresShown(computeFindings(trialOf(plants)).treatments);
  expect(shown([plant(100), plant(110)])).not.toContain('per_plant_set');
  expect(shown([plant(100), plant(null, { status: 'dead' })])).toContain('per_plant_set');
});

test('where the trial is tested and its treatments have intervals of their own, their difference is told', () => {
  const plants = ['a', 'b'].flatMap((cultivar) =>
    [100, 111, 125].map((weight) => plant(weight, { treatment: { cultivar } })),
  );
  const design = { arrangement: 'completely randomised', allotted: 'position', randomised: true } as const;
  const trial = trialOf(plants, { design });
  const notesOf = (findings: ReturnType<typeof computeFindings>) =>
    treatmentSummaryTable(trial, findings, levelNames(trial), findings.treatments, 'per_pot', () => 'w')
      .notes;
  const findings = computeFindings(trial);
  expect(notesOf(findings).join(' ')).toContain('rest on the error of the whole trial');
  expect(notesOf({ ...findings, inference: [] }).join(' ')).not.toContain('whole trial');
});
