import { expect, test } from 'vitest';
import { computeFindings } from '../../../src/compute/findings.ts';
import { workingGroups } from '../../../src/compute/workings/working-groups.ts';
import { levelNames } from '../../../src/compute/format/level-names.ts';
import { csvText } from '../../../src/publish/csv.ts';
import { weightsTable } from '../../../src/publish/weights-table.ts';
import { trialOf } from '../../support/trial-of.ts';

const trial = trialOf([
  { container: 'T1', treatment: { cultivar: 'a' }, weight: 100 },
  { container: 'T1', treatment: { cultivar: 'b' }, weight: 140 },
  { container: 'T1', treatment: { cultivar: 'a' }, weight: 120 },
  { container: 'T1', treatment: { cultivar: 'a' }, weight: null, status: 'dead' },
]);
const findings = computeFindings(trial);
const [group] = workingGroups(trial, findings, levelNames(trial));
const ofA = group!.workings[0]!.measures.find(({ measure }) => measure === 'per_plant_harvested')!;

test('a working holds the values that went in, and what was left out with its reason', () => {
  expect(ofA.values.map(({ value }) => value)).toEqual(['100', '120']);
  expect(ofA.leftOut).toEqual([{ place: 'T1 4 1', reason: 'not counted by its status', rows: [5] }]);
});

test('each value names the rows of weights.csv in which it stands', () => {
  const lines = csvText(weightsTable(trial)).split('\n');
  for (const { value, rows } of ofA.values) {
    for (const row of rows) expect(lines[row - 1]!.split(',')).toContain(value);
  }
});

test('the formula of the mean holds the sum, n and the mean', () => {
  const mean = ofA.steps.find(({ name }) => name === 'Mean')!;
  expect(mean.formula).toMatch(/= 220(\.0)? ÷ 2 = 110(\.0)? g$/);
});

test('no two workings share an anchor', () => {
  const ids = group!.workings.flatMap(({ measures }) => measures.map(({ id }) => id));
  expect(new Set(ids).size).toBe(ids.length);
});
