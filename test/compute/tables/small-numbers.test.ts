import { expect, test } from 'vitest';
import { computeFindings } from '../../../src/compute/findings.ts';
import { levelNames } from '../../../src/compute/format/level-names.ts';
import { comparisonTables } from '../../../src/compute/tables/inference/comparison-tables.ts';
import { positionTables } from '../../../src/compute/tables/position-tables.ts';
import { trialOf } from '../../support/trial-of.ts';

// Four kinds in a square of four rows and columns, each row 0.6 g and each column 0.4 g heavier, and little else.
const trial = trialOf(
  [0, 1, 2, 3].flatMap((row) =>
    [0, 1, 2, 3].map((column) => ({
      container: 'T1',
      row: row + 1,
      column: column + 1,
      treatment: { sort: 'abcd'.charAt((row + column) % 4) },
      weight: 100 + 0.6 * row + 0.4 * column + ((row * 7 + column * 3) % 5) / 10,
    })),
  ),
  {
    design: { arrangement: 'completely randomised', allotted: 'position', randomised: true },
    variable: { resolution: 1 },
  },
);
const findings = computeFindings(trial);
const texts = (cells: readonly unknown[]) => JSON.stringify(cells);
/** A number of nothing but zeros, in either unit. */
const zero = /(?<![\d.])[+−]?0(?:\.0+)?(?![\d.])/;

test('no limit of a difference prints as zero that is not, in either unit', () => {
  const [inference] = findings.inference;
  // A limit that is next to nothing, as where p is close to alpha.
  const [pair] = inference!.differences;
  const near = { ...inference!, differences: [{ ...pair!, estimate: 2, lower: 0.01, upper: 4 }] };
  const { differences } = comparisonTables(trial, findings, levelNames(trial), near, 'working');
  expect(texts(differences[0]!.rows[0]!.cells)).toMatch(/\+0\.01 to \+4\.00/);
  expect(texts([differences[0]!.rows[0]!.cells[1]])).not.toMatch(zero);
});

test('no standard error of a slope prints as zero that is not, in either unit', () => {
  for (const { rows, columns } of positionTables(trial, findings)) {
    for (const { cells } of rows) {
      for (const heading of ['A row on', 'A column on']) {
        const at = columns.findIndex((column) => column.heading === heading) - 1;
        expect(texts([cells[at]])).toContain(' ± ');
        expect(texts([cells[at]])).not.toMatch(zero);
      }
    }
  }
});
